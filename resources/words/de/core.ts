<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>&quot;%1&quot; is not a length</source>
        <translation>„%1“ ist keine Länge</translation>
    </message>
    <message>
        <source>Type it like 82.5, 8.25 cm, 3 1/4 in</source>
        <translation>So eingeben: 82,5, 8,25 cm oder 3 1/4 in</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>Type it without a thousands mark</source>
        <translation>Ohne Tausenderzeichen eingeben</translation>
    </message>
    <message>
        <source>that is longer than any workshop</source>
        <translation>das ist länger als jede Werkstatt</translation>
    </message>
    <message>
        <source>Check the unit</source>
        <translation>Einheit prüfen</translation>
    </message>
    <message>
        <source>%1 can be read in two ways</source>
        <translation>%1 lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>%1 is not a number</source>
        <translation>%1 ist keine Zahl</translation>
    </message>
    <message>
        <source>Type it like 82.5 or 3 1/4</source>
        <translation>So eingeben: 82,5 oder 3 1/4</translation>
    </message>
    <message>
        <source>nothing is left of an object once its height is taken out</source>
        <translation>vom Gegenstand bleibt nichts, wenn seine Höhe herausgerechnet ist</translation>
    </message>
    <message>
        <source>Check the height, or stand nearer above it</source>
        <translation>Höhe prüfen oder näher darüber aufnehmen</translation>
    </message>
    <message>
        <source>the picture ends before its size is said</source>
        <translation>das Bild endet, bevor seine Größe genannt ist</translation>
    </message>
    <message>
        <source>Copy the file again</source>
        <translation>Datei noch einmal kopieren</translation>
    </message>
    <message>
        <source>the picture has no size</source>
        <translation>das Bild hat keine Größe</translation>
    </message>
    <message>
        <source>the picture has %1 × %2 pixels; 120 million can be measured</source>
        <translation>das Bild hat %1 × %2 Bildpunkte; 120 Millionen lassen sich vermessen</translation>
    </message>
    <message>
        <source>Save it smaller</source>
        <translation>Kleiner speichern</translation>
    </message>
    <message>
        <source>the picture&apos;s file is longer than 64 MB</source>
        <translation>die Bilddatei ist länger als 64 MB</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG picture</source>
        <translation>das ist weder ein JPEG- noch ein PNG-Bild</translation>
    </message>
    <message>
        <source>Save it as one of these</source>
        <translation>Als eines von beiden speichern</translation>
    </message>
    <message>
        <source>the picture is of the measuring sheet, not of white paper</source>
        <translation>das Bild zeigt das Messblatt, kein weißes Papier</translation>
    </message>
    <message>
        <source>Say that it is the measuring sheet</source>
        <translation>Messblatt als Unterlage wählen</translation>
    </message>
    <message>
        <source>Lay a white sheet on a darker table and photograph all of it from above</source>
        <translation>Weißes Papier auf einen dunkleren Tisch legen und ganz von oben aufnehmen</translation>
    </message>
    <message>
        <source>no light sheet is seen</source>
        <translation>kein helles Blatt zu sehen</translation>
    </message>
    <message>
        <source>the light area has not four straight sides: something lies over the sheet&apos;s edge</source>
        <translation>die helle Fläche hat nicht vier gerade Seiten: etwas liegt über dem Rand des Blatts</translation>
    </message>
    <message>
        <source>a corner of the sheet is outside the picture</source>
        <translation>eine Ecke des Blatts liegt außerhalb des Bildes</translation>
    </message>
    <message>
        <source>a side of the sheet doesn&apos;t stand out from the table</source>
        <translation>eine Seite des Blatts hebt sich nicht vom Tisch ab</translation>
    </message>
    <message>
        <source>a side of the sheet isn&apos;t straight: it is curled, or the lens bends it</source>
        <translation>eine Seite des Blatts ist nicht gerade: es wellt sich, oder das Objektiv krümmt sie</translation>
    </message>
    <message>
        <source>two sides of the sheet don&apos;t meet</source>
        <translation>zwei Seiten des Blatts treffen sich nicht</translation>
    </message>
    <message>
        <source>which side of the sheet is the longer one can&apos;t be told from so far aside</source>
        <translation>so schräg lässt sich nicht sagen, welche Seite des Blatts die längere ist</translation>
    </message>
    <message>
        <source>Photograph the whole sheet, sharp, from above, with nothing over its marks</source>
        <translation>Das ganze Messblatt scharf von oben aufnehmen, nichts über seinen Marken</translation>
    </message>
    <message>
        <source>only %1 of the sheet&apos;s ten marks are seen</source>
        <translation>nur %1 der zehn Marken des Messblatts sind zu sehen</translation>
    </message>
    <message>
        <source>the sheet&apos;s four corner marks are not all seen, one of them with a dot</source>
        <translation>die vier Eckmarken des Messblatts, eine davon mit Punkt, sind nicht alle zu sehen</translation>
    </message>
    <message>
        <source>the sheet&apos;s four corner marks lie on one line</source>
        <translation>die vier Eckmarken des Messblatts liegen auf einer Linie</translation>
    </message>
    <message>
        <source>the measuring sheet in the picture is of another paper</source>
        <translation>das Messblatt im Bild hat ein anderes Papierformat</translation>
    </message>
    <message>
        <source>Choose the paper it was printed on</source>
        <translation>Das Papier wählen, auf das es gedruckt ist</translation>
    </message>
    <message>
        <source>the marks are not where this sheet has them: another paper size, or a mirrored picture</source>
        <translation>die Marken liegen nicht, wo dieses Messblatt sie hat: anderes Papierformat oder gespiegeltes Bild</translation>
    </message>
    <message>
        <source>the picture has only %1 pixels to the mm</source>
        <translation>das Bild hat nur %1 Bildpunkte je mm</translation>
    </message>
    <message>
        <source>Go nearer, or take a photo of more pixels</source>
        <translation>Näher herangehen oder mit mehr Bildpunkten aufnehmen</translation>
    </message>
    <message>
        <source>the scan does not say its resolution</source>
        <translation>der Scan nennt seine Auflösung nicht</translation>
    </message>
    <message>
        <source>Type the dots per inch it was scanned with</source>
        <translation>Die Punkte je Zoll eingeben, mit denen gescannt wurde</translation>
    </message>
    <message>
        <source>the scan is smaller than 8 mm</source>
        <translation>der Scan ist kleiner als 8 mm</translation>
    </message>
    <message>
        <source>Type the resolution it was scanned with</source>
        <translation>Die Auflösung eingeben, mit der gescannt wurde</translation>
    </message>
    <message>
        <source>the picture can&apos;t be decoded</source>
        <translation>das Bild lässt sich nicht entschlüsseln</translation>
    </message>
    <message>
        <source>Copy or save it again</source>
        <translation>Noch einmal kopieren oder speichern</translation>
    </message>
    <message>
        <source>the edge of an object crosses itself</source>
        <translation>der Rand eines Gegenstands kreuzt sich selbst</translation>
    </message>
    <message>
        <source>Take a sharper photo, or brush the object by hand</source>
        <translation>Schärfer aufnehmen oder den Gegenstand mit dem Pinsel malen</translation>
    </message>
    <message>
        <source>too little bare paper is seen around the objects</source>
        <translation>rund um die Gegenstände ist zu wenig freies Papier zu sehen</translation>
    </message>
    <message>
        <source>Lay fewer objects on the sheet, apart from each other, in even light</source>
        <translation>Weniger Gegenstände auflegen, mit Abstand, in gleichmäßigem Licht</translation>
    </message>
    <message>
        <source>something reaches over the edge of the field</source>
        <translation>etwas ragt über den Rand des Feldes</translation>
    </message>
    <message>
        <source>Lay the objects inside the field, or brush away what is no object</source>
        <translation>Gegenstände ins Feld legen oder wegpinseln, was keiner ist</translation>
    </message>
    <message>
        <source>the edge of an object is blurred over more than 1 mm</source>
        <translation>der Rand eines Gegenstands ist über mehr als 1 mm unscharf</translation>
    </message>
    <message>
        <source>Hold the camera still, focus on the object, or take more light</source>
        <translation>Kamera ruhig halten, auf den Gegenstand scharf stellen oder mehr Licht geben</translation>
    </message>
    <message>
        <source>more than 60 objects are seen</source>
        <translation>mehr als 60 Gegenstände zu sehen</translation>
    </message>
    <message>
        <source>Photograph fewer at a time</source>
        <translation>Weniger auf einmal aufnehmen</translation>
    </message>
    <message>
        <source>no object stands out from the paper</source>
        <translation>kein Gegenstand hebt sich vom Papier ab</translation>
    </message>
    <message>
        <source>Take more light, or brush over the object by hand</source>
        <translation>Mehr Licht geben oder den Gegenstand mit dem Pinsel malen</translation>
    </message>
    <message>
        <source>this program was built without the measuring of pictures</source>
        <translation>dieses Programm wurde ohne das Vermessen von Bildern gebaut</translation>
    </message>
    <message>
        <source>Build it with libopencv-core-dev, libopencv-imgproc-dev, libopencv-imgcodecs-dev and libopencv-calib3d-dev installed</source>
        <translation>Mit installiertem libopencv-core-dev, libopencv-imgproc-dev, libopencv-imgcodecs-dev und libopencv-calib3d-dev bauen</translation>
    </message>
    <message>
        <source>the measuring of pictures can&apos;t be loaded (%1)</source>
        <translation>das Vermessen von Bildern lässt sich nicht laden (%1)</translation>
    </message>
    <message>
        <source>Install Drawercast again with all the packages it asks for</source>
        <translation>Drawercast mit allen verlangten Paketen neu installieren</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund genannt</translation>
    </message>
    <message>
        <source>it belongs to Drawercast %1</source>
        <translation>es gehört zu Drawercast %1</translation>
    </message>
    <message>
        <source>the sheet&apos;s marks lie on one line</source>
        <translation>die Marken des Messblatts liegen auf einer Linie</translation>
    </message>
    <message>
        <source>Photograph the sheet from above</source>
        <translation>Das Messblatt von oben aufnehmen</translation>
    </message>
    <message>
        <source>the sheet&apos;s marks are off by %1 mm: it does not lie flat, or was not printed at 100 %</source>
        <translation>die Marken des Messblatts liegen um %1 mm daneben: es liegt nicht flach oder ist nicht mit 100 % gedruckt</translation>
    </message>
    <message>
        <source>Tape the sheet to a flat board and measure its scales</source>
        <translation>Messblatt auf ein ebenes Brett kleben und seine Maßstäbe nachmessen</translation>
    </message>
    <message>
        <source>the picture is too small to measure in</source>
        <translation>das Bild ist zum Messen zu klein</translation>
    </message>
    <message>
        <source>Take a larger one</source>
        <translation>Ein größeres nehmen</translation>
    </message>
    <message>
        <source>how far the camera was can&apos;t be told from this picture</source>
        <translation>wie weit die Kamera weg war, lässt sich aus diesem Bild nicht sagen</translation>
    </message>
    <message>
        <source>Type the distance from lens to sheet</source>
        <translation>Den Abstand vom Objektiv zum Blatt eingeben</translation>
    </message>
    <message>
        <source>the objects are nearly as high as the camera was</source>
        <translation>die Gegenstände sind fast so hoch wie die Kamera</translation>
    </message>
    <message>
        <source>Go farther away</source>
        <translation>Weiter weggehen</translation>
    </message>
    <message>
        <source>the picture can&apos;t be measured</source>
        <translation>das Bild lässt sich nicht vermessen</translation>
    </message>
    <message>
        <source>Take another one</source>
        <translation>Ein anderes nehmen</translation>
    </message>
    <message>
        <source>the foam does not fit the mixing container in any number of batches</source>
        <translation>der Schaum passt in keiner Anzahl von Ansätzen in das Mischgefäß</translation>
    </message>
    <message>
        <source>use a larger container or mixer</source>
        <translation>größeres Mischgefäß oder größeren Mischer nehmen</translation>
    </message>
    <message>
        <source>the cup&apos;s foam is not lighter than its liquid</source>
        <translation>der Schaum im Becher ist nicht leichter als seine Flüssigkeit</translation>
    </message>
    <message>
        <source>check its diameter, liquid and risen height, or do not use the cup</source>
        <translation>Durchmesser, Flüssigkeit und Steighöhe prüfen oder den Becher weglassen</translation>
    </message>
    <message>
        <source>the cup&apos;s start, half and full rise are not in this order</source>
        <translation>Start, halbe und volle Steighöhe des Bechers folgen nicht aufeinander</translation>
    </message>
    <message>
        <source>check its times, or do not use the cup</source>
        <translation>seine Zeiten prüfen oder den Becher weglassen</translation>
    </message>
    <message>
        <source>the pockets leave no room for foam</source>
        <translation>die Aussparungen lassen dem Schaum keinen Platz</translation>
    </message>
    <message>
        <source>move, shrink or remove pockets</source>
        <translation>Aussparungen verschieben, verkleinern oder weglassen</translation>
    </message>
    <message>
        <source>the overpack is below 0, so the mold would not fill</source>
        <translation>die Überfüllung ist unter 0, die Form würde nicht voll</translation>
    </message>
    <message>
        <source>raise the overpack</source>
        <translation>Überfüllung erhöhen</translation>
    </message>
    <message>
        <source>the liquid alone would fill the mold</source>
        <translation>schon die Flüssigkeit würde die Form füllen</translation>
    </message>
    <message>
        <source>make the insert thicker or use a foam that rises more</source>
        <translation>Einsatz dicker machen oder einen Schaum nehmen, der stärker steigt</translation>
    </message>
    <message>
        <source>lower the overpack or use a foam that rises more</source>
        <translation>Überfüllung senken oder einen Schaum nehmen, der stärker steigt</translation>
    </message>
    <message>
        <source>the job would not open as it is now</source>
        <translation>der Auftrag ließe sich so nicht wieder öffnen</translation>
    </message>
    <message>
        <source>Undo the last change; this is a fault of the program</source>
        <translation>Die letzte Änderung zurücknehmen; das ist ein Fehler des Programms</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>Give the file a name in it</source>
        <translation>Der Datei darin einen Namen geben</translation>
    </message>
    <message>
        <source>the file may not be written to</source>
        <translation>in die Datei darf nicht geschrieben werden</translation>
    </message>
    <message>
        <source>Save it under another name</source>
        <translation>Unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Use a whole number from %1 to %2</source>
        <translation>Eine ganze Zahl von %1 bis %2 nehmen</translation>
    </message>
    <message>
        <source>Use a number over %1 to %2</source>
        <translation>Eine Zahl über %1 bis %2 nehmen</translation>
    </message>
    <message>
        <source>Use a number from %1 to %2</source>
        <translation>Eine Zahl von %1 bis %2 nehmen</translation>
    </message>
    <message>
        <source>is not a number</source>
        <translation>ist keine Zahl</translation>
    </message>
    <message>
        <source>Write a plain number there</source>
        <translation>Dort eine einfache Zahl schreiben</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>%1 is not a whole number</source>
        <translation>%1 ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>The diagonals do not fit the sides as they were read</source>
        <translation>Die Diagonalen passen nicht zu den abgelesenen Seiten</translation>
    </message>
    <message>
        <source>Read both diagonals and the four sides again, corner to corner</source>
        <translation>Beide Diagonalen und die vier Seiten noch einmal von Ecke zu Ecke ablesen</translation>
    </message>
    <message>
        <source>Every reading must be above 0 and at most 5000 mm</source>
        <translation>Jede Ablesung muss über 0 und höchstens 5000 mm sein</translation>
    </message>
    <message>
        <source>Fill in all three widths, three depths and both diagonals</source>
        <translation>Alle drei Breiten, drei Tiefen und beide Diagonalen eintragen</translation>
    </message>
    <message>
        <source>No rectangle fits inside these readings</source>
        <translation>In diese Ablesungen passt kein Rechteck</translation>
    </message>
    <message>
        <source>Read the drawer again, both diagonals from corner to corner</source>
        <translation>Die Schublade noch einmal ablesen, beide Diagonalen von Ecke zu Ecke</translation>
    </message>
    <message>
        <source>Mend the text there, or open the backup</source>
        <translation>Dort den Text berichtigen oder die Sicherung öffnen</translation>
    </message>
    <message>
        <source>nested deeper than %1 levels</source>
        <translation>tiefer als %1 Ebenen verschachtelt</translation>
    </message>
    <message>
        <source>the text ends too soon</source>
        <translation>der Text endet zu früh</translation>
    </message>
    <message>
        <source>something follows after the end of the job</source>
        <translation>nach dem Ende des Auftrags folgt noch etwas</translation>
    </message>
    <message>
        <source>not JSON: %1</source>
        <translation>kein JSON: %1</translation>
    </message>
    <message>
        <source>larger than %1 MB</source>
        <translation>größer als %1 MB</translation>
    </message>
    <message>
        <source>A job is far smaller: check that this is the right file</source>
        <translation>Ein Auftrag ist viel kleiner: prüfen, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>holds more values than any job</source>
        <translation>enthält mehr Werte als jeder Auftrag</translation>
    </message>
    <message>
        <source>a list is read %1 rows at a time</source>
        <translation>eine Liste wird zu je %1 Zeilen gelesen</translation>
    </message>
    <message>
        <source>Add the rows above, then paste these</source>
        <translation>Die Zeilen oben hinzufügen, dann diese einfügen</translation>
    </message>
    <message>
        <source>That is more text than any list of objects</source>
        <translation>Das ist mehr Text als jede Liste von Gegenständen</translation>
    </message>
    <message>
        <source>Copy the rows of the objects alone</source>
        <translation>Nur die Zeilen der Gegenstände kopieren</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice in one object</source>
        <translation>der Schlüssel „%1“ steht zweimal in einem Objekt</translation>
    </message>
    <message>
        <source>Take one of the two out</source>
        <translation>Einen der beiden weglassen</translation>
    </message>
    <message>
        <source>the cup&apos;s times do not follow one another</source>
        <translation>die Zeiten des Bechers folgen nicht aufeinander</translation>
    </message>
    <message>
        <source>Enter start before half before full rise, in seconds from the start of mixing</source>
        <translation>Start vor halber vor voller Steighöhe eingeben, in Sekunden ab Mischbeginn</translation>
    </message>
    <message>
        <source>the foam has risen before its pot life is over</source>
        <translation>der Schaum ist gestiegen, bevor seine Topfzeit um ist</translation>
    </message>
    <message>
        <source>Full rise must come after the pot life: check both times</source>
        <translation>Voll aufgeschäumt muss nach der Topfzeit kommen: beide Zeiten prüfen</translation>
    </message>
    <message>
        <source>the foam is softer at 40 % than at 25 % compression</source>
        <translation>der Schaum ist bei 40 % Stauchung weicher als bei 25 %</translation>
    </message>
    <message>
        <source>Check the two stresses</source>
        <translation>Die beiden Stauchhärten prüfen</translation>
    </message>
    <message>
        <source>has no cylinder</source>
        <translation>hat keinen Zylinder</translation>
    </message>
    <message>
        <source>Write at least one [length, diameter]</source>
        <translation>Mindestens ein [Länge, Durchmesser] schreiben</translation>
    </message>
    <message>
        <source>a cylinder lies wholly above the insert&apos;s face</source>
        <translation>ein Zylinder liegt ganz über der Oberseite des Einsatzes</translation>
    </message>
    <message>
        <source>The axis lies more than its radius above the face: lower it</source>
        <translation>Die Achse liegt höher als ihr Radius über der Oberseite: tiefer setzen</translation>
    </message>
    <message>
        <source>a level that goes through has no depth of its own</source>
        <translation>eine durchgehende Stufe hat keine eigene Tiefe</translation>
    </message>
    <message>
        <source>a lying round has its own form and depth</source>
        <translation>ein liegender Rundkörper hat eigene Form und Tiefe</translation>
    </message>
    <message>
        <source>the object has no level</source>
        <translation>der Gegenstand hat keine Stufe</translation>
    </message>
    <message>
        <source>Give it at least one outline with a depth</source>
        <translation>Mindestens einen Umriss mit Tiefe angeben</translation>
    </message>
    <message>
        <source>needs %1 numbers</source>
        <translation>braucht %1 Zahlen</translation>
    </message>
    <message>
        <source>needs %1 to %2 numbers</source>
        <translation>braucht %1 bis %2 Zahlen</translation>
    </message>
    <message>
        <source>Write them as a list, in mm</source>
        <translation>Als Liste in mm schreiben</translation>
    </message>
    <message>
        <source>is no list of at most %1 corners</source>
        <translation>ist keine Liste von höchstens %1 Ecken</translation>
    </message>
    <message>
        <source>Write [[x, y], …] in mm</source>
        <translation>[[x, y], …] in mm schreiben</translation>
    </message>
    <message>
        <source>the job&apos;s outlines have too many corners and arcs in all</source>
        <translation>die Umrisse des Auftrags haben zusammen zu viele Ecken und Bögen</translation>
    </message>
    <message>
        <source>Leave out corners and arcs that nobody could measure</source>
        <translation>Ecken und Bögen weglassen, die niemand messen könnte</translation>
    </message>
    <message>
        <source>is no outline</source>
        <translation>ist kein Umriss</translation>
    </message>
    <message>
        <source>Write one of {&quot;rect&quot;: [w, h, r]}, {&quot;circle&quot;: [d]}, {&quot;capsule&quot;: [l, w]}, {&quot;polygon&quot;: [[x, y], …]}</source>
        <translation>{&quot;rect&quot;: [w, h, r]}, {&quot;circle&quot;: [d]}, {&quot;capsule&quot;: [l, w]} oder {&quot;polygon&quot;: [[x, y], …]} schreiben</translation>
    </message>
    <message>
        <source>has no capacity, and only screws have a formula for it</source>
        <translation>hat keine Tragkraft, und nur für Schrauben gibt es eine Formel</translation>
    </message>
    <message>
        <source>Enter the load it holds, from its data sheet</source>
        <translation>Die Tragkraft aus dem Datenblatt eintragen</translation>
    </message>
    <message>
        <source>the shop closes before it opens</source>
        <translation>die Werkstatt schließt, bevor sie öffnet</translation>
    </message>
    <message>
        <source>Closing must be later than opening</source>
        <translation>Schließen muss nach dem Öffnen liegen</translation>
    </message>
    <message>
        <source>Save it in another folder, or make room on the disk</source>
        <translation>In einem anderen Ordner speichern oder Platz auf dem Datenträger schaffen</translation>
    </message>
    <message>
        <source>the file that was there is no job that can be read, so the backup was left as it is</source>
        <translation>die bisherige Datei ist kein lesbarer Auftrag, die Sicherung blieb daher, wie sie war</translation>
    </message>
    <message>
        <source>The job itself is saved</source>
        <translation>Der Auftrag selbst ist gespeichert</translation>
    </message>
    <message>
        <source>the version before could not be kept</source>
        <translation>die vorige Fassung ließ sich nicht aufheben</translation>
    </message>
    <message>
        <source>The job itself is saved; make room for &quot;%1&quot;</source>
        <translation>Der Auftrag selbst ist gespeichert; Platz für „%1“ schaffen</translation>
    </message>
    <message>
        <source>the job would not open again: %1</source>
        <translation>der Auftrag ließe sich nicht wieder öffnen: %1</translation>
    </message>
    <message>
        <source>this is no file that a job can be kept in</source>
        <translation>das ist keine Datei, in der ein Auftrag stehen kann</translation>
    </message>
    <message>
        <source>Give it another name</source>
        <translation>Einen anderen Namen geben</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation>ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>could not be replaced</source>
        <translation>ließ sich nicht ersetzen</translation>
    </message>
    <message>
        <source>could not be opened</source>
        <translation>ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>Check the name and the folder</source>
        <translation>Name und Ordner prüfen</translation>
    </message>
    <message>
        <source>could not be read</source>
        <translation>ließ sich nicht lesen</translation>
    </message>
    <message>
        <source>Check that it is a file you may read</source>
        <translation>Prüfen, ob die Datei gelesen werden darf</translation>
    </message>
    <message>
        <source>is larger than %1 MB</source>
        <translation>ist größer als %1 MB</translation>
    </message>
    <message>
        <source>Check that this is the right file</source>
        <translation>Prüfen, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>the viewBox does not hold four numbers</source>
        <translation>die viewBox enthält nicht vier Zahlen</translation>
    </message>
    <message>
        <source>the viewBox has no size</source>
        <translation>die viewBox hat keine Größe</translation>
    </message>
    <message>
        <source>width or height is not more than 0</source>
        <translation>Breite oder Höhe ist nicht größer als 0</translation>
    </message>
    <message>
        <source>the file is over 8 MB</source>
        <translation>die Datei ist über 8 MB groß</translation>
    </message>
    <message>
        <source>Save only the outline, without pictures</source>
        <translation>Nur den Umriss speichern, ohne Bilder</translation>
    </message>
    <message>
        <source>Draw the path once more, or save it as an SVG with nothing in it but outlines</source>
        <translation>Den Pfad noch einmal zeichnen oder als SVG speichern, das nur Umrisse enthält</translation>
    </message>
    <message>
        <source>“%1” is no command of a path</source>
        <translation>„%1“ ist kein Befehl eines Pfades</translation>
    </message>
    <message>
        <source>a path begins with M</source>
        <translation>ein Pfad beginnt mit M</translation>
    </message>
    <message>
        <source>a command is missing before this</source>
        <translation>davor fehlt ein Befehl</translation>
    </message>
    <message>
        <source>an arc wants 0 or 1 here</source>
        <translation>ein Bogen braucht hier 0 oder 1</translation>
    </message>
    <message>
        <source>a number is missing here</source>
        <translation>hier fehlt eine Zahl</translation>
    </message>
    <message>
        <source>the path has more than 5000 corners</source>
        <translation>der Pfad hat mehr als 5000 Ecken</translation>
    </message>
    <message>
        <source>“%1” is no number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>is not an object</source>
        <translation>ist kein Objekt</translation>
    </message>
    <message>
        <source>Write { … } there</source>
        <translation>Dort { … } schreiben</translation>
    </message>
    <message>
        <source>is not a list</source>
        <translation>ist keine Liste</translation>
    </message>
    <message>
        <source>Write [ … ] there</source>
        <translation>Dort [ … ] schreiben</translation>
    </message>
    <message>
        <source>holds %1 items</source>
        <translation>enthält %1 Einträge</translation>
    </message>
    <message>
        <source>At most %1 can be worked with</source>
        <translation>Mit höchstens %1 lässt sich arbeiten</translation>
    </message>
    <message>
        <source>has no &quot;%1&quot;</source>
        <translation>hat kein &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Add it there</source>
        <translation>Dort ergänzen</translation>
    </message>
    <message>
        <source>Leave one of the two out</source>
        <translation>Einen der beiden weglassen</translation>
    </message>
    <message>
        <source>is not a text</source>
        <translation>ist kein Text</translation>
    </message>
    <message>
        <source>Write it in quotes</source>
        <translation>In Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>is longer than any note</source>
        <translation>ist länger als jede Notiz</translation>
    </message>
    <message>
        <source>Shorten it</source>
        <translation>Kürzen</translation>
    </message>
    <message>
        <source>is neither true nor false</source>
        <translation>ist weder true noch false</translation>
    </message>
    <message>
        <source>Write true or false</source>
        <translation>true oder false schreiben</translation>
    </message>
    <message>
        <source>needs two lengths</source>
        <translation>braucht zwei Längen</translation>
    </message>
    <message>
        <source>Write [a, b] in mm</source>
        <translation>[a, b] in mm schreiben</translation>
    </message>
    <message>
        <source>is not a point</source>
        <translation>ist kein Punkt</translation>
    </message>
    <message>
        <source>Write [x, y] in mm</source>
        <translation>[x, y] in mm schreiben</translation>
    </message>
    <message>
        <source>is none of the words known here</source>
        <translation>ist keines der hier bekannten Wörter</translation>
    </message>
    <message>
        <source>Use one of %1</source>
        <translation>Eines von diesen nehmen: %1</translation>
    </message>
    <message>
        <source>the drawing has no closed outline</source>
        <translation>die Zeichnung hat keinen geschlossenen Umriss</translation>
    </message>
    <message>
        <source>Turn letters and strokes into paths, and save it as an SVG with nothing in it but outlines</source>
        <translation>Schrift und Striche in Pfade umwandeln und als SVG speichern, das nur Umrisse enthält</translation>
    </message>
    <message>
        <source>&lt;%1&gt;: %2</source>
        <translation>&lt;%1&gt;: %2</translation>
    </message>
    <message>
        <source>a drawing begins with &lt;svg&gt;</source>
        <translation>eine Zeichnung beginnt mit &lt;svg&gt;</translation>
    </message>
    <message>
        <source>a drawing within the drawing</source>
        <translation>eine Zeichnung in der Zeichnung</translation>
    </message>
    <message>
        <source>the transform cannot be read</source>
        <translation>die Umformung lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>its points cannot be read, or are over 5000</source>
        <translation>ihre Punkte lassen sich nicht lesen, oder es sind über 5000</translation>
    </message>
    <message>
        <source>the drawing has more than 300 outlines</source>
        <translation>die Zeichnung hat mehr als 300 Umrisse</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be an id</source>
        <translation>&quot;%1&quot; kann kein Kürzel sein</translation>
    </message>
    <message>
        <source>Use a word without #</source>
        <translation>Ein Wort ohne # nehmen</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; is there twice</source>
        <translation>%1 &quot;%2&quot; steht zweimal da</translation>
    </message>
    <message>
        <source>Give one of the two another id</source>
        <translation>Einem von beiden ein anderes Kürzel geben</translation>
    </message>
    <message>
        <source>the object id</source>
        <translation>das Kürzel des Gegenstands</translation>
    </message>
    <message>
        <source>the drawer id</source>
        <translation>das Kürzel der Schublade</translation>
    </message>
    <message>
        <source>there is no object &quot;%1&quot;</source>
        <translation>es gibt keinen Gegenstand &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Add the object, or take the pocket out</source>
        <translation>Den Gegenstand ergänzen oder die Aussparung weglassen</translation>
    </message>
    <message>
        <source>%1#%2 stands twice</source>
        <translation>%1#%2 steht zweimal da</translation>
    </message>
    <message>
        <source>Give one of the two another &quot;n&quot;</source>
        <translation>Einem von beiden ein anderes &quot;n&quot; geben</translation>
    </message>
    <message>
        <source>it has no length</source>
        <translation>die Länge fehlt</translation>
    </message>
    <message>
        <source>it has no width</source>
        <translation>die Breite fehlt</translation>
    </message>
    <message>
        <source>it has no height</source>
        <translation>die Höhe fehlt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no size</source>
        <translation>„%1“ ist keine Größe</translation>
    </message>
    <message>
        <source>Use a length above 0</source>
        <translation>Eine Länge über 0 nehmen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not three sizes</source>
        <translation>„%1“ sind nicht drei Maße</translation>
    </message>
    <message>
        <source>Type it like 140 x 90 x 45</source>
        <translation>So eingeben: 140 x 90 x 45</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number of pieces</source>
        <translation>„%1“ ist keine Stückzahl</translation>
    </message>
    <message>
        <source>Use a whole number</source>
        <translation>Eine ganze Zahl eingeben</translation>
    </message>
    <message>
        <source>Give each object length, width and height</source>
        <translation>Jedem Gegenstand Länge, Breite und Höhe geben</translation>
    </message>
    <message>
        <source>there is no drawing in it</source>
        <translation>es ist keine Zeichnung darin</translation>
    </message>
    <message>
        <source>Choose a file in the SVG format</source>
        <translation>Eine Datei im SVG-Format wählen</translation>
    </message>
    <message>
        <source>the file ends too early</source>
        <translation>die Datei endet zu früh</translation>
    </message>
    <message>
        <source>Save the drawing once more</source>
        <translation>Die Zeichnung noch einmal speichern</translation>
    </message>
    <message>
        <source>the file declares entities of its own</source>
        <translation>die Datei erklärt eigene Entitäten</translation>
    </message>
    <message>
        <source>Save it as an SVG with nothing in it but outlines, without a declaration in brackets</source>
        <translation>Als SVG speichern, das nur Umrisse enthält, ohne Erklärung in eckigen Klammern</translation>
    </message>
    <message>
        <source>an attribute has no value</source>
        <translation>ein Attribut hat keinen Wert</translation>
    </message>
    <message>
        <source>an attribute’s value is not in quotes</source>
        <translation>der Wert eines Attributs steht nicht in Anführungszeichen</translation>
    </message>
    <message>
        <source>an attribute’s value does not end</source>
        <translation>der Wert eines Attributs endet nicht</translation>
    </message>
    <message>
        <source>an &amp; names no character</source>
        <translation>ein &amp; nennt kein Zeichen</translation>
    </message>
    <message>
        <source>Write &amp;amp;</source>
        <translation>&amp;amp; schreiben</translation>
    </message>
    <message>
        <source>the file uses an entity that XML does not have</source>
        <translation>die Datei verwendet eine Entität, die XML nicht kennt</translation>
    </message>
    <message>
        <source>Save it as an SVG with nothing in it but outlines</source>
        <translation>Als SVG speichern, das nur Umrisse enthält</translation>
    </message>
    <message>
        <source>the file ends within a tag</source>
        <translation>die Datei endet innerhalb eines Tags</translation>
    </message>
    <message>
        <source>a &lt; begins no tag</source>
        <translation>ein &lt; beginnt kein Tag</translation>
    </message>
    <message>
        <source>Write &amp;lt;</source>
        <translation>&amp;lt; schreiben</translation>
    </message>
    <message>
        <source>a tag does not end</source>
        <translation>ein Tag endet nicht</translation>
    </message>
    <message>
        <source>this is no attribute</source>
        <translation>das ist kein Attribut</translation>
    </message>
    <message>
        <source>an attribute is given twice</source>
        <translation>ein Attribut steht zweimal da</translation>
    </message>
    <message>
        <source>a tag has more than 200 attributes</source>
        <translation>ein Tag hat mehr als 200 Attribute</translation>
    </message>
    <message>
        <source>elements are more than 100 deep in each other</source>
        <translation>Elemente sind mehr als 100-fach verschachtelt</translation>
    </message>
    <message>
        <source>Ungroup the drawing</source>
        <translation>Gruppen der Zeichnung auflösen</translation>
    </message>
    <message>
        <source>an element ends that was not begun</source>
        <translation>ein Element endet, das nicht begonnen wurde</translation>
    </message>
    <message>
        <source>the obstructions cut the insert in two</source>
        <translation>die Hindernisse teilen den Einsatz in zwei Stücke</translation>
    </message>
    <message>
        <source>Move them, or plan two drawers</source>
        <translation>Sie versetzen oder zwei Schubladen planen</translation>
    </message>
    <message>
        <source>gap and obstructions leave no insert</source>
        <translation>Spalt und Hindernisse lassen keinen Einsatz übrig</translation>
    </message>
    <message>
        <source>Choose a smaller gap</source>
        <translation>Einen kleineren Spalt wählen</translation>
    </message>
    <message>
        <source>the fit leaves no pocket in one piece</source>
        <translation>die Passung lässt keine Aussparung aus einem Stück übrig</translation>
    </message>
    <message>
        <source>Squeeze the object less</source>
        <translation>Den Gegenstand weniger klemmen</translation>
    </message>
    <message>
        <source>there is no drawer to quote</source>
        <translation>es gibt keine Schublade für die Kostenschätzung</translation>
    </message>
    <message>
        <source>Give one drawer at least</source>
        <translation>Mindestens eine Schublade angeben</translation>
    </message>
    <message>
        <source>a drawer must be 50 mm to 10 m wide and deep</source>
        <translation>eine Schublade muss 50 mm bis 10 m breit und tief sein</translation>
    </message>
    <message>
        <source>Give its inside size</source>
        <translation>Ihr Innenmaß angeben</translation>
    </message>
    <message>
        <source>an insert must be over 5 mm and at most 500 mm thick</source>
        <translation>ein Einsatz muss über 5 mm und höchstens 500 mm dick sein</translation>
    </message>
    <message>
        <source>Give its thickness</source>
        <translation>Seine Dicke angeben</translation>
    </message>
    <message>
        <source>there may be 0 to 10000 objects</source>
        <translation>es dürfen 0 bis 10000 Gegenstände sein</translation>
    </message>
    <message>
        <source>Give about how many</source>
        <translation>Ungefähr angeben, wie viele</translation>
    </message>
    <message>
        <source>objects may cover up to 90 % of an insert, and must cover some of it</source>
        <translation>Gegenstände dürfen bis 90 % eines Einsatzes bedecken und müssen etwas davon bedecken</translation>
    </message>
    <message>
        <source>Give about how much</source>
        <translation>Ungefähr angeben, wie viel</translation>
    </message>
    <message>
        <source>Wall %1, needs %2</source>
        <translation>Steg %1, nötig %2</translation>
    </message>
    <message>
        <source>Edge %1, needs %2</source>
        <translation>Rand %1, nötig %2</translation>
    </message>
    <message>
        <source>Floor %1, needs %2</source>
        <translation>Boden %1, nötig %2</translation>
    </message>
    <message>
        <source>Pockets overlap by %1</source>
        <translation>Aussparungen überlappen um %1</translation>
    </message>
    <message>
        <source>Reaches %1 beyond the insert</source>
        <translation>Reicht %1 über den Einsatz hinaus</translation>
    </message>
    <message>
        <source>Needs %1 of height, the drawer has %2</source>
        <translation>Braucht %1 Höhe, die Schublade hat %2</translation>
    </message>
    <message>
        <source>Finger notch does not touch its pocket</source>
        <translation>Griffmulde berührt ihre Aussparung nicht</translation>
    </message>
    <message>
        <source>The fit leaves nothing of a level</source>
        <translation>Die Passung lässt von einer Stufe nichts übrig</translation>
    </message>
    <message>
        <source>The insert is not one piece</source>
        <translation>Der Einsatz ist nicht aus einem Stück</translation>
    </message>
    <message>
        <source>Stands where the drawer has an obstruction</source>
        <translation>Steht, wo die Schublade ein Hindernis hat</translation>
    </message>
    <message>
        <source>Objects weigh %1, the drawer carries %2</source>
        <translation>Gegenstände wiegen %1, die Schublade trägt %2</translation>
    </message>
    <message>
        <source>Presses the foam with %1, keep below %2</source>
        <translation>Drückt mit %1 auf den Schaum, unter %2 bleiben</translation>
    </message>
    <message>
        <source>%1 of %2 placed</source>
        <translation>%1 von %2 platziert</translation>
    </message>
    <message>
        <source>Foam figures are by the label</source>
        <translation>Schaumwerte nach Etikett</translation>
    </message>
    <message>
        <source>At the low end the foam fills %1 of the mold, needs %2</source>
        <translation>Am unteren Ende füllt der Schaum %1 der Form, nötig %2</translation>
    </message>
    <message>
        <source>At the high end the mold holds %1 fills of foam, keep below %2</source>
        <translation>Am oberen Ende enthält die Form %1 Füllungen Schaum, unter %2 bleiben</translation>
    </message>
    <message>
        <source>%1 batches side by side, 1 person</source>
        <translation>%1 Ansätze gleichzeitig, 1 Person</translation>
    </message>
    <message>
        <source>%1 batches side by side, %2 people</source>
        <translation>%1 Ansätze gleichzeitig, %2 Personen</translation>
    </message>
    <message>
        <source>The dose is for %1</source>
        <translation>Die Dosis gilt für %1</translation>
    </message>
    <message>
        <source>Mixing and pouring take %1 s, the pot life is %2 s</source>
        <translation>Mischen und Gießen dauern %1 s, die Topfzeit ist %2 s</translation>
    </message>
    <message>
        <source>The foam can&apos;t be worked out</source>
        <translation>Der Schaum lässt sich nicht berechnen</translation>
    </message>
    <message>
        <source>An outline could not be worked out</source>
        <translation>Ein Umriss ließ sich nicht berechnen</translation>
    </message>
    <message>
        <source>%1 of air stay shut in here</source>
        <translation>%1 Luft bleiben hier eingeschlossen</translation>
    </message>
    <message>
        <source>A vent runs into a stiffener</source>
        <translation>Ein Entlüftungsloch trifft eine Versteifung</translation>
    </message>
    <message>
        <source>Wood beside the vent %1, needs %2</source>
        <translation>Holz neben dem Entlüftungsloch %1, nötig %2</translation>
    </message>
    <message>
        <source>%1 of foam leave through the vents, %2 were mixed for that</source>
        <translation>%1 Schaum gehen durch die Entlüftung, %2 wurden dafür gemischt</translation>
    </message>
    <message>
        <source>The floor needs %1 kPa·s to fill, the rise gives %2</source>
        <translation>Der Boden braucht %1 kPa·s zum Füllen, das Steigen gibt %2</translation>
    </message>
    <message>
        <source>Slot between blocks %1, needs %2</source>
        <translation>Schlitz zwischen Klötzen %1, nötig %2</translation>
    </message>
    <message>
        <source>Blocks shut off a channel that needs %1</source>
        <translation>Klötze sperren einen Kanal ab, der %1 braucht</translation>
    </message>
    <message>
        <source>Move it between the blocks, or delete it</source>
        <translation>Zwischen die Klötze schieben oder löschen</translation>
    </message>
    <message>
        <source>Move it over the mold’s opening, or delete it</source>
        <translation>Über die Öffnung der Form schieben oder löschen</translation>
    </message>
    <message>
        <source>Add the drill to the list, or take another closure</source>
        <translation>Den Bohrer in die Liste aufnehmen oder einen anderen Verschluss nehmen</translation>
    </message>
    <message>
        <source>Check the cup’s diameter, mass and height, in their units, or pour another</source>
        <translation>Durchmesser, Masse und Höhe des Bechers mit ihren Einheiten prüfen oder einen neuen gießen</translation>
    </message>
    <message>
        <source>Its foam must be lighter than its liquid, and start, half and full rise follow each other: correct the cup, or do not use it</source>
        <translation>Sein Schaum muss leichter sein als die Flüssigkeit, und Beginn, halb und ganz gestiegen müssen aufeinander folgen: den Becher berichtigen oder nicht verwenden</translation>
    </message>
    <message>
        <source>A pour set by hand is not in the mold</source>
        <translation>Eine von Hand gesetzte Gießstelle liegt nicht in der Form</translation>
    </message>
    <message>
        <source>A vent set by hand is not over the foam</source>
        <translation>Ein von Hand gesetztes Loch liegt nicht über dem Schaum</translation>
    </message>
    <message>
        <source>No drill in the shop’s list suits it: %1 or a little more</source>
        <translation>Kein Bohrer der Werkstatt passt dazu: %1 oder etwas mehr</translation>
    </message>
    <message>
        <source>No drill in the shop’s list suits it: about %1 into the wall, %2 through the plate</source>
        <translation>Kein Bohrer der Werkstatt passt dazu: etwa %1 in die Wand, %2 durch die Druckplatte</translation>
    </message>
    <message>
        <source>By the test cup the foam rises ×%1, by its label ×%2</source>
        <translation>Nach dem Probebecher steigt der Schaum ×%1, nach dem Etikett ×%2</translation>
    </message>
    <message>
        <source>A test cup in use can’t be right</source>
        <translation>Ein verwendeter Probebecher kann nicht stimmen</translation>
    </message>
    <message>
        <source>Lessen or remove a set pour</source>
        <translation>Eine gesetzte Gießstelle verringern oder entfernen</translation>
    </message>
    <message>
        <source>Dunk it only as far as it sits in the foam, or correct depth and outlines</source>
        <translation>Nur so weit tauchen, wie es im Schaum sitzt, oder Tiefe und Umrisse berichtigen</translation>
    </message>
    <message>
        <source>The pours set by hand take %1, only %2 are poured</source>
        <translation>Die von Hand gesetzten Gießstellen brauchen %1, gegossen werden nur %2</translation>
    </message>
    <message>
        <source>Dunked, it measured %1; its outlines hold only %2</source>
        <translation>Getaucht maß es %1; seine Umrisse fassen nur %2</translation>
    </message>
    <message>
        <source>The plate bows %1, keep below %2</source>
        <translation>Die Druckplatte biegt sich %1 durch, unter %2 bleiben</translation>
    </message>
    <message>
        <source>Under the plate a gap of %1 opens, keep below %2</source>
        <translation>Unter der Druckplatte öffnet sich ein Spalt von %1, unter %2 bleiben</translation>
    </message>
    <message>
        <source>The plate is stressed to %1 MPa, keep below %2</source>
        <translation>Die Druckplatte ist mit %1 MPa belastet, unter %2 bleiben</translation>
    </message>
    <message>
        <source>A closure is pulled with %1, keep below %2</source>
        <translation>An einem Verschluss ziehen %1, unter %2 bleiben</translation>
    </message>
    <message>
        <source>A wall of the box bows %1, keep below %2</source>
        <translation>Eine Wand des Kastens biegt sich %1 durch, unter %2 bleiben</translation>
    </message>
    <message>
        <source>A screw does not reach the box wall, needs %1 in it</source>
        <translation>Eine Schraube erreicht die Kastenwand nicht, nötig %1 darin</translation>
    </message>
    <message>
        <source>A screw goes %1 into the box wall, needs %2</source>
        <translation>Eine Schraube geht %1 in die Kastenwand, nötig %2</translation>
    </message>
    <message>
        <source>A screw goes %1 into the box wall, which has room for %2</source>
        <translation>Eine Schraube geht %1 in die Kastenwand, Platz ist für %2</translation>
    </message>
    <message>
        <source>The box wall is %1 thick, its closures need %2</source>
        <translation>Die Kastenwand ist %1 dick, ihre Verschlüsse brauchen %2</translation>
    </message>
    <message>
        <source>A rod is %1 long; nut to nut it takes %2</source>
        <translation>Eine Gewindestange ist %1 lang; von Mutter zu Mutter braucht sie %2</translation>
    </message>
    <message>
        <source>The plate is on at %1 s, must be on by %2 s</source>
        <translation>Die Druckplatte liegt nach %1 s auf, muss nach %2 s aufliegen</translation>
    </message>
    <message>
        <source>None at hand, %1 needed</source>
        <translation>Keine vorhanden, %1 nötig</translation>
    </message>
    <message>
        <source>%1 at hand, %2 needed</source>
        <translation>%1 vorhanden, %2 nötig</translation>
    </message>
    <message>
        <source>No closure in the shop’s list fits: a screw has to be %1 to %2 long</source>
        <translation>Kein Verschluss der Werkstattliste passt: eine Schraube muss %1 bis %2 lang sein</translation>
    </message>
    <message>
        <source>No closure in the shop’s list fits: the box wall is too low for its screws</source>
        <translation>Kein Verschluss der Werkstattliste passt: die Kastenwand ist zu niedrig für seine Schrauben</translation>
    </message>
    <message>
        <source>Whether screw heads pull through a board of %1 is not checked</source>
        <translation>Ob Schraubenköpfe durch eine Platte von %1 ziehen, ist nicht geprüft</translation>
    </message>
    <message>
        <source>A part measures %1, its stock only %2</source>
        <translation>Ein Teil misst %1, das Material nur %2</translation>
    </message>
    <message>
        <source>A piece to saw is only %1 wide; between fence and blade %2 is the least</source>
        <translation>Ein Sägestück ist nur %1 breit; zwischen Anschlag und Sägeblatt mindestens %2</translation>
    </message>
    <message>
        <source>Move one of them apart by %1</source>
        <translation>Einen von beiden um %1 wegrücken</translation>
    </message>
    <message>
        <source>Move it away from the edge by %1</source>
        <translation>Um %1 vom Rand wegrücken</translation>
    </message>
    <message>
        <source>Make the pocket shallower or the insert thicker by %1</source>
        <translation>Aussparung flacher oder Einsatz dicker machen, um %1</translation>
    </message>
    <message>
        <source>Move them apart</source>
        <translation>Auseinanderrücken</translation>
    </message>
    <message>
        <source>Move it inside the insert</source>
        <translation>In den Einsatz rücken</translation>
    </message>
    <message>
        <source>Make the pocket deeper, the insert thicker, or lay the object down</source>
        <translation>Aussparung tiefer oder Einsatz dicker machen oder den Gegenstand hinlegen</translation>
    </message>
    <message>
        <source>Move the notch against its pocket, or let it be a pocket of its own</source>
        <translation>Griffmulde an ihre Aussparung rücken oder zu einer eigenen Aussparung machen</translation>
    </message>
    <message>
        <source>Use a looser fit or a larger outline</source>
        <translation>Losere Passung oder größeren Umriss nehmen</translation>
    </message>
    <message>
        <source>Make the gap smaller, or move the obstruction that cuts the drawer in two</source>
        <translation>Spalt verkleinern oder das Hindernis versetzen, das die Schublade teilt</translation>
    </message>
    <message>
        <source>Move the pocket off the obstruction</source>
        <translation>Aussparung vom Hindernis wegrücken</translation>
    </message>
    <message>
        <source>Take heavy objects to another drawer</source>
        <translation>Schwere Gegenstände in eine andere Schublade legen</translation>
    </message>
    <message>
        <source>Give the object a wider foot or use a firmer foam</source>
        <translation>Dem Gegenstand einen breiteren Fuß geben oder festeren Schaum nehmen</translation>
    </message>
    <message>
        <source>Place the rest, or lower the count</source>
        <translation>Den Rest platzieren oder die Stückzahl senken</translation>
    </message>
    <message>
        <source>Pour a test cup and enter it: the pressure to build for comes down with it</source>
        <translation>Probebecher gießen und eintragen: damit sinkt der Bemessungsdruck</translation>
    </message>
    <message>
        <source>Raise the overpack or pour a test cup</source>
        <translation>Überfüllung erhöhen oder einen Probebecher gießen</translation>
    </message>
    <message>
        <source>Lower the overpack or pour a test cup</source>
        <translation>Überfüllung senken oder einen Probebecher gießen</translation>
    </message>
    <message>
        <source>Use larger containers, more people, or a foam with a longer pot life</source>
        <translation>Größere Mischgefäße, mehr Leute oder einen Schaum mit längerer Topfzeit nehmen</translation>
    </message>
    <message>
        <source>A sea-level dose would put %1 on the plate here: use this dose</source>
        <translation>Eine Dosis für Meereshöhe würde hier mit %1 auf die Druckplatte drücken: diese Dosis nehmen</translation>
    </message>
    <message>
        <source>Pour in more batches, use cooler parts, or a foam with a longer pot life</source>
        <translation>In mehr Ansätzen gießen, kühlere Komponenten oder einen Schaum mit längerer Topfzeit nehmen</translation>
    </message>
    <message>
        <source>Less overpack, or a foam that rises more</source>
        <translation>Weniger Überfüllung oder ein Schaum, der stärker steigt</translation>
    </message>
    <message>
        <source>Move the pocket a little, or simplify its outline</source>
        <translation>Aussparung ein wenig verschieben oder ihren Umriss vereinfachen</translation>
    </message>
    <message>
        <source>Add a vent here, or let the vents arrange themselves</source>
        <translation>Hier ein Entlüftungsloch setzen oder die Entlüftung selbst anordnen lassen</translation>
    </message>
    <message>
        <source>Move the vent away by %1</source>
        <translation>Entlüftungsloch um %1 wegrücken</translation>
    </message>
    <message>
        <source>Use a smaller drill or fewer vents, or peg each as soon as foam shows</source>
        <translation>Kleineren Bohrer oder weniger Löcher nehmen oder jedes zustöpselen, sobald Schaum kommt</translation>
    </message>
    <message>
        <source>Make the pocket shallower, the insert thicker, or split the block</source>
        <translation>Aussparung flacher oder Einsatz dicker machen oder den Klotz teilen</translation>
    </message>
    <message>
        <source>Foam does not come through: move the blocks apart</source>
        <translation>Schaum kommt nicht durch: Klötze auseinanderrücken</translation>
    </message>
    <message>
        <source>As the pour begins, brush some of the mixed foam into the slot, or move the blocks apart</source>
        <translation>Zu Beginn des Gießens den Schlitz mit angerührtem Schaum einstreichen oder Klötze auseinanderrücken</translation>
    </message>
    <message>
        <source>Set a pour point in it</source>
        <translation>Eine Gießstelle hineinsetzen</translation>
    </message>
    <message>
        <source>Use a thicker board or one more stiffener</source>
        <translation>Dickere Platte oder eine Versteifung mehr nehmen</translation>
    </message>
    <message>
        <source>Set closures closer, add a stiffener, or lay a gasket strip</source>
        <translation>Verschlüsse enger setzen, eine Versteifung ergänzen oder ein Dichtband einlegen</translation>
    </message>
    <message>
        <source>Set closures closer, or take longer or thicker ones</source>
        <translation>Verschlüsse enger setzen oder längere oder dickere nehmen</translation>
    </message>
    <message>
        <source>Use a thicker board for the box</source>
        <translation>Dickere Platte für den Kasten nehmen</translation>
    </message>
    <message>
        <source>Take a longer screw</source>
        <translation>Längere Schraube nehmen</translation>
    </message>
    <message>
        <source>Take a shorter screw</source>
        <translation>Kürzere Schraube nehmen</translation>
    </message>
    <message>
        <source>Use a thicker board for the box or thinner closures</source>
        <translation>Eine dickere Platte für den Kasten oder dünnere Verschlüsse nehmen</translation>
    </message>
    <message>
        <source>Take longer rods, or clamps</source>
        <translation>Längere Gewindestangen nehmen, oder Zwingen</translation>
    </message>
    <message>
        <source>Start closures before the pour, let one more person close, use clamps or rods, or cooler parts</source>
        <translation>Verschlüsse vor dem Gießen ansetzen, noch jemanden schließen lassen, Zwingen oder Gewindestangen oder kühlere Komponenten nehmen</translation>
    </message>
    <message>
        <source>Buy or borrow the rest before the pour</source>
        <translation>Den Rest vor dem Gießen kaufen oder leihen</translation>
    </message>
    <message>
        <source>Add one to the list, or a rod or clamp</source>
        <translation>Eine in die Liste aufnehmen, oder Gewindestange oder Zwinge</translation>
    </message>
    <message>
        <source>Add a rod, a clamp or a thinner screw to the list</source>
        <translation>Gewindestange, Zwinge oder dünnere Schraube in die Liste aufnehmen</translation>
    </message>
    <message>
        <source>There is no published figure for it: lay a washer under each head</source>
        <translation>Dafür gibt es keinen veröffentlichten Wert: unter jeden Kopf eine Scheibe legen</translation>
    </message>
    <message>
        <source>Use longer stock, or join it from two</source>
        <translation>Längeres Material nehmen oder aus zweien fügen</translation>
    </message>
    <message>
        <source>Use longer stock: a joint in plate, stiffener or box is not in the figures and would open</source>
        <translation>Längeres Material nehmen: eine Fuge in Druckplatte, Versteifung oder Kasten ist nicht gerechnet und würde aufgehen</translation>
    </message>
    <message>
        <source>Cut it from a wider piece so that the narrow part falls off the free side of the blade; push stick, guard on</source>
        <translation>Von einem breiteren Stück so absägen, dass das schmale Teil auf der freien Seite des Blatts abfällt; Schiebestock, Schutzhaube</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. %2.</source>
        <translation>%1. %2.</translation>
    </message>
    <message>
        <source>Choose a smaller change of size, or simplify the outline</source>
        <translation>Kleinere Größenänderung wählen oder den Umriss vereinfachen</translation>
    </message>
    <message>
        <source>nothing is left of the outline</source>
        <translation>vom Umriss bleibt nichts</translation>
    </message>
    <message>
        <source>the outline falls apart</source>
        <translation>der Umriss zerfällt</translation>
    </message>
    <message>
        <source>the outline closes around an island</source>
        <translation>der Umriss schließt sich um eine Insel</translation>
    </message>
    <message>
        <source>the outline meets itself</source>
        <translation>der Umriss trifft auf sich selbst</translation>
    </message>
    <message>
        <source>Squeeze the object less, or check the outline</source>
        <translation>Den Gegenstand weniger klemmen oder den Umriss prüfen</translation>
    </message>
    <message>
        <source>the fit leaves nothing of the outline</source>
        <translation>die Passung lässt vom Umriss nichts übrig</translation>
    </message>
    <message>
        <source>the fit at the ends makes the outline meet itself</source>
        <translation>die Passung an den Enden lässt den Umriss auf sich selbst treffen</translation>
    </message>
    <message>
        <source>with the fit, %1</source>
        <translation>mit der Passung: %1</translation>
    </message>
    <message>
        <source>%1 must be over 0 and at most 100000 mm</source>
        <translation>%1 muss über 0 und höchstens 100000 mm sein</translation>
    </message>
    <message>
        <source>Give the measured size in mm</source>
        <translation>Das gemessene Maß in mm angeben</translation>
    </message>
    <message>
        <source>width and height of a rectangle</source>
        <translation>Breite und Höhe eines Rechtecks</translation>
    </message>
    <message>
        <source>the corner radius %1 mm is not from 0 to half the lesser side</source>
        <translation>der Eckradius %1 mm liegt nicht zwischen 0 und der halben kürzeren Seite</translation>
    </message>
    <message>
        <source>Give at most %1 mm</source>
        <translation>Höchstens %1 mm angeben</translation>
    </message>
    <message>
        <source>the diameter of a circle</source>
        <translation>der Durchmesser eines Kreises</translation>
    </message>
    <message>
        <source>length and width of an obround</source>
        <translation>Länge und Breite eines Langlochs</translation>
    </message>
    <message>
        <source>an obround is at least as long as wide</source>
        <translation>ein Langloch ist mindestens so lang wie breit</translation>
    </message>
    <message>
        <source>Swap length and width and turn it by 90 degrees</source>
        <translation>Länge und Breite tauschen und um 90 Grad drehen</translation>
    </message>
    <message>
        <source>the outline has more than %1</source>
        <translation>der Umriss hat mehr als %1</translation>
    </message>
    <message>
        <source>20000 chords for its arcs</source>
        <translation>20000 Sehnen für seine Bögen</translation>
    </message>
    <message>
        <source>the outline encloses no area</source>
        <translation>der Umriss umschließt keine Fläche</translation>
    </message>
    <message>
        <source>Give at least three corners that are not on one line, or two with an arc between them</source>
        <translation>Mindestens drei Ecken angeben, die nicht auf einer Linie liegen, oder zwei mit einem Bogen dazwischen</translation>
    </message>
    <message>
        <source>the outline crosses itself at %1</source>
        <translation>der Umriss kreuzt sich selbst bei %1</translation>
    </message>
    <message>
        <source>the outline touches itself at %1</source>
        <translation>der Umriss berührt sich selbst bei %1</translation>
    </message>
    <message>
        <source>Put the corners in the order in which one walks around the object</source>
        <translation>Die Ecken in der Reihenfolge angeben, in der man um den Gegenstand geht</translation>
    </message>
    <message>
        <source>the arcs bulge so far that inside and outside change places</source>
        <translation>die Bögen wölben sich so weit, dass innen und außen vertauscht sind</translation>
    </message>
    <message>
        <source>Check the sign and the size of the arc heights</source>
        <translation>Vorzeichen und Größe der Stichhöhen prüfen</translation>
    </message>
    <message>
        <source>5000 corners</source>
        <translation>5000 Ecken</translation>
    </message>
    <message>
        <source>a corner of the outline is not a number within 100000 mm</source>
        <translation>eine Ecke des Umrisses ist keine Zahl innerhalb von 100000 mm</translation>
    </message>
    <message>
        <source>Give the corners in mm</source>
        <translation>Die Ecken in mm angeben</translation>
    </message>
    <message>
        <source>Move or turn one of the outlines a little, or simplify it</source>
        <translation>Einen der Umrisse ein wenig verschieben oder drehen oder vereinfachen</translation>
    </message>
    <message>
        <source>an outline can&apos;t be used for areas: %1</source>
        <translation>ein Umriss taugt nicht zum Rechnen mit Flächen: %1</translation>
    </message>
    <message>
        <source>the area of two outlines together could not be worked out reliably</source>
        <translation>die gemeinsame Fläche zweier Umrisse ließ sich nicht verlässlich berechnen</translation>
    </message>
    <message>
        <source>an outline could not be made larger or smaller reliably</source>
        <translation>ein Umriss ließ sich nicht verlässlich vergrößern oder verkleinern</translation>
    </message>
    <message>
        <source>this is not a Drawercast job</source>
        <translation>das ist kein Auftrag von Drawercast</translation>
    </message>
    <message>
        <source>Open a file whose &quot;format&quot; is &quot;drawercast-job&quot;</source>
        <translation>Eine Datei öffnen, deren &quot;format&quot; &quot;drawercast-job&quot; ist</translation>
    </message>
    <message>
        <source>the job does not say its version</source>
        <translation>der Auftrag nennt seine Version nicht</translation>
    </message>
    <message>
        <source>Write &quot;version&quot;: %1</source>
        <translation>&quot;version&quot;: %1 schreiben</translation>
    </message>
    <message>
        <source>this job needs a newer Drawercast: it is of version %1, and this program reads up to version %2</source>
        <translation>dieser Auftrag braucht ein neueres Drawercast: er hat Version %1, dieses Programm liest bis Version %2</translation>
    </message>
    <message>
        <source>Open it with a newer Drawercast</source>
        <translation>Mit einem neueren Drawercast öffnen</translation>
    </message>
    <message>
        <source>is no cylinder</source>
        <translation>ist kein Zylinder</translation>
    </message>
    <message>
        <source>Write [length, diameter] in mm</source>
        <translation>[Länge, Durchmesser] in mm schreiben</translation>
    </message>
    <message>
        <source>Keep one of them</source>
        <translation>Eine davon behalten</translation>
    </message>
    <message>
        <source>a package of this supply is in the list already</source>
        <translation>eine Packung dieses Verbrauchsmaterials steht schon in der Liste</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1: %2 auf der Waage</translation>
    </message>
    <message>
        <source>A into B: start mixing</source>
        <translation>A in B: Mischen beginnen</translation>
    </message>
    <message>
        <source>Batch %1 of %2: %3</source>
        <translation>Ansatz %1 von %2: %3</translation>
    </message>
    <message>
        <source>Crush the insert all over while it is fresh</source>
        <translation>Den frischen Einsatz überall durchwalken</translation>
    </message>
    <message>
        <source>Cut blocks, boxes and plates; label each</source>
        <translation>Zuschneiden: Klötze, Kästen, Platten; jedes Teil beschriften</translation>
    </message>
    <message>
        <source>Cut the plugs flush, open, peel the insert out</source>
        <translation>Zapfen bündig abschneiden, öffnen, Einsatz herausziehen</translation>
    </message>
    <message>
        <source>Tighten the closures</source>
        <translation>Verschlüsse anziehen</translation>
    </message>
    <message>
        <source>Tighten the closures, %1 of them</source>
        <translation>Verschlüsse anziehen, %1 Stück</translation>
    </message>
    <message>
        <source>Dry run with a stopwatch, water poured into a tub</source>
        <translation>Probelauf mit Stoppuhr, Wasser in eine Wanne gegossen</translation>
    </message>
    <message>
        <source>Dry-fit, drill every hole, mark, take apart, dust off</source>
        <translation>Trocken zusammenbauen, alle Löcher bohren, anzeichnen, zerlegen, entstauben</translation>
    </message>
    <message>
        <source>First coat of release</source>
        <translation>Erster Anstrich Trennmittel</translation>
    </message>
    <message>
        <source>First coat of sealer, two more on end grain</source>
        <translation>Erster Anstrich Versiegelung, auf Hirnholz zwei mehr</translation>
    </message>
    <message>
        <source>Fit it and air it before electronics go in</source>
        <translation>Einpassen und auslüften, bevor Elektronik hineinkommt</translation>
    </message>
    <message>
        <source>Fix the blocks from below and lay the clay fillets</source>
        <translation>Klötze von unten verschrauben und Hohlkehlen aus Modelliermasse ziehen</translation>
    </message>
    <message>
        <source>Leave it alone until it has risen</source>
        <translation>In Ruhe lassen, bis der Schaum gestiegen ist</translation>
    </message>
    <message>
        <source>Left out: &lt;%1&gt;</source>
        <translation>Weggelassen: &lt;%1&gt;</translation>
    </message>
    <message>
        <source>Let it cure, then cut the plugs flush and open</source>
        <translation>Aushärten, Zapfen bündig abschneiden, öffnen</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>Peg or tape each vent as foam shows</source>
        <translation>Jedes Loch zustöpseln, sobald Schaum kommt</translation>
    </message>
    <message>
        <source>Plate on</source>
        <translation>Druckplatte auflegen</translation>
    </message>
    <message>
        <source>Pour</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>Pour the foam, stirred and mixed; plate on, close, peg the vents</source>
        <translation>Schaum gießen, aufgerührt und gemischt; Druckplatte auflegen, schließen, Löcher zustöpseln</translation>
    </message>
    <message>
        <source>Second coat of release</source>
        <translation>Zweiter Anstrich Trennmittel</translation>
    </message>
    <message>
        <source>Second coat of sealer</source>
        <translation>Zweiter Anstrich Versiegelung</translation>
    </message>
    <message>
        <source>Start the stopwatch</source>
        <translation>Stoppuhr starten</translation>
    </message>
    <message>
        <source>Stir part A and part B, each in its own can with its own dry stick; close the cans again</source>
        <translation>Komponente A und Komponente B aufrühren, jede in ihrer Dose mit eigenem trockenem Holz; Dosen wieder schließen</translation>
    </message>
    <message>
        <source>%1 or %2; %3 stays in the bucket</source>
        <translation>%1 oder %2; %3 bleibt im Eimer</translation>
    </message>
    <message>
        <source>The drawing does not say its size: 96 units were taken as one inch</source>
        <translation>Die Zeichnung nennt ihre Größe nicht: 96 Einheiten gelten als ein Zoll</translation>
    </message>
    <message>
        <source>Third coat of sealer; leave it overnight</source>
        <translation>Dritter Anstrich Versiegelung; über Nacht trocknen lassen</translation>
    </message>
    <message>
        <source>Wash the tools, in open air</source>
        <translation>Werkzeug reinigen, im Freien</translation>
    </message>
    <message>
        <source>Wipe it off and lay it flat</source>
        <translation>Abwischen und flach hinlegen</translation>
    </message>
    <message>
        <source>as if A met B now</source>
        <translation>als träfe A jetzt auf B</translation>
    </message>
    <message>
        <source>centers in line</source>
        <translation>Mitten in einer Linie</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>first brush some of the foam into the narrow slots</source>
        <translation>vorher etwas Schaum in die engen Schlitze streichen</translation>
    </message>
    <message>
        <source>edge as the shop wants it</source>
        <translation>Rand wie gewünscht</translation>
    </message>
    <message>
        <source>equal walls</source>
        <translation>gleiche Stege</translation>
    </message>
    <message>
        <source>gloves, goggles, breathing protection; air moving</source>
        <translation>Handschuhe, Schutzbrille, Atemschutz; Raum gelüftet</translation>
    </message>
    <message>
        <source>falls out</source>
        <translation>fällt heraus</translation>
    </message>
    <message>
        <source>from the side; nobody leans over the mold</source>
        <translation>von der Seite; niemand beugt sich über die Form</translation>
    </message>
    <message>
        <source>mark it at the moment they meet</source>
        <translation>in dem Augenblick drücken, in dem A auf B trifft</translation>
    </message>
    <message>
        <source>mold at 20 °C at least</source>
        <translation>Form mindestens 20 °C warm</translation>
    </message>
    <message>
        <source>mold level to 2 mm across it</source>
        <translation>Form waagerecht auf 2 mm</translation>
    </message>
    <message>
        <source>or %1</source>
        <translation>oder %1</translation>
    </message>
    <message>
        <source>or %1; what sticks to the cup is missing: rinse the cup with part A first and empty it; never with water</source>
        <translation>oder %1; was im Becher hängen bleibt, fehlt: Becher vorher mit Komponente A ausschwenken und leeren; nie mit Wasser</translation>
    </message>
    <message>
        <source>part A %1</source>
        <translation>Komponente A %1</translation>
    </message>
    <message>
        <source>part A, in a cup of its own: %1</source>
        <translation>Komponente A, in eigenem Becher: %1</translation>
    </message>
    <message>
        <source>part B %1</source>
        <translation>Komponente B %1</translation>
    </message>
    <message>
        <source>parts at %1 to %2 °C: all seconds are for that</source>
        <translation>Komponenten bei %1 bis %2 °C: Dafür gelten alle Sekunden</translation>
    </message>
    <message>
        <source>pigment %1</source>
        <translation>Pigment %1</translation>
    </message>
    <message>
        <source>release dry</source>
        <translation>Trennmittel trocken</translation>
    </message>
    <message>
        <source>scrape sides and bottom while mixing</source>
        <translation>beim Mischen Wand und Boden abstreifen</translation>
    </message>
    <message>
        <source>sides in line</source>
        <translation>Kanten in einer Linie</translation>
    </message>
    <message>
        <source>in the order of the numbers on the pour map: slots, over blocks, the widest channel last; never scrape out</source>
        <translation>nach den Nummern des Gießplans: Schlitze, über die Klötze, der breiteste Kanal zuletzt; nie auskratzen</translation>
    </message>
    <message>
        <source>stir it in</source>
        <translation>einrühren</translation>
    </message>
    <message>
        <source>test cup poured and entered</source>
        <translation>Probebecher gegossen und eingetragen</translation>
    </message>
    <message>
        <source>the closing is still being worked out: rather sooner than later</source>
        <translation>das Schließen wird noch berechnet: lieber früher als später</translation>
    </message>
    <message>
        <source>two hands</source>
        <translation>zwei Hände</translation>
    </message>
    <message>
        <source>wall as the shop wants it</source>
        <translation>Steg wie gewünscht</translation>
    </message>
    <message>
        <source>wood at 10 % moisture or less</source>
        <translation>Holz höchstens 10 % feucht</translation>
    </message>
    <message>
        <source>clay %1</source>
        <translation>Modelliermasse %1</translation>
    </message>
    <message>
        <source>in the order of their numbers on the plate</source>
        <translation>in der Reihenfolge ihrer Nummern auf der Druckplatte</translation>
    </message>
    <message>
        <source>release %1</source>
        <translation>Trennmittel %1</translation>
    </message>
    <message>
        <source>sealer %1</source>
        <translation>Versiegelung %1</translation>
    </message>
    <message>
        <source>mold at 68 °F at least</source>
        <translation>Form mindestens 68 °F warm</translation>
    </message>
    <message>
        <source>mold level to 1/16 in across it</source>
        <translation>Form waagerecht auf 1/16 in</translation>
    </message>
    <message>
        <source>parts at %1 to %2 °F: all seconds are for that</source>
        <translation>Komponenten bei %1 bis %2 °F: Dafür gelten alle Sekunden</translation>
    </message>
    <message>
        <source>A box wall is stressed to %1 MPa, keep below %2</source>
        <translation>Eine Kastenwand ist mit %1 MPa beansprucht, unter %2 halten</translation>
    </message>
    <message>
        <source>A screw in a wall’s foot is pulled with %1, keep below %2</source>
        <translation>An einer Schraube im Fuß einer Kastenwand ziehen %1, unter %2 halten</translation>
    </message>
    <message>
        <source>The base bows %1, keep below %2</source>
        <translation>Die Grundplatte biegt sich %1 durch, unter %2 bleiben</translation>
    </message>
    <message>
        <source>The base is stressed to %1 MPa, keep below %2</source>
        <translation>Die Grundplatte ist mit %1 MPa beansprucht, unter %2 bleiben</translation>
    </message>
    <message>
        <source>Under the box walls a gap of %1 opens, keep below %2</source>
        <translation>Unter den Kastenwänden öffnet sich ein Spalt von %1, unter %2 halten</translation>
    </message>
    <message>
        <source>The test cup was poured at %1, the shop is at %2</source>
        <translation>Der Probebecher wurde bei %1 gegossen, die Werkstatt hat %2</translation>
    </message>
    <message>
        <source>Pour a new cup today: times are taken shorter until then, never longer</source>
        <translation>Heute einen neuen Becher gießen: Bis dahin werden Zeiten kürzer genommen, nie länger</translation>
    </message>
    <message>
        <source>Use a denser or thicker board for the box, or hold base and plate together with rods</source>
        <translation>Eine dichtere oder dickere Platte für den Kasten nehmen oder Grundplatte und Druckplatte mit Gewindestangen zusammenhalten</translation>
    </message>
    <message>
        <source>Use a thicker board for the box, or put bearers of a stronger piece under it</source>
        <translation>Eine dickere Platte für den Kasten nehmen oder Lagerhölzer aus einem stärkeren Kantholz darunterlegen</translation>
    </message>
</context>
</TS>
