<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source> as measured</source>
        <translation> laut Messung</translation>
    </message>
    <message>
        <source> deep</source>
        <translation> tief</translation>
    </message>
    <message>
        <source> is empty</source>
        <translation> ist leer</translation>
    </message>
    <message>
        <source> min at the earliest</source>
        <translation> min frühestens</translation>
    </message>
    <message>
        <source> mixed in </source>
        <translation> gemischt in </translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source> of </source>
        <translation> von </translation>
    </message>
    <message>
        <source> of closed</source>
        <translation> des geschlossenen</translation>
    </message>
    <message>
        <source> poured</source>
        <translation> gegossen</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1  ·  %2  ·  page %3 of %4</source>
        <translation>%1  ·  %2  ·  Seite %3 von %4</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>at %1 % of its limit</source>
        <translation>zu %1 % ausgenutzt</translation>
    </message>
    <message>
        <source>air, plate and cuts: %1 %</source>
        <translation>Luft, Druckplatte und Zuschnitt: %1 %</translation>
    </message>
    <message>
        <source>%1 %, full ×%2 at the low end and ×%3 at the high end</source>
        <translation>%1 %, füllt ×%2 am unteren und ×%3 am oberen Ende</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>length, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 % of its limit</source>
        <translation>%1 %2 % der Grenze</translation>
    </message>
    <message>
        <source>%1 %2 % of the rise, our guess</source>
        <translation>%1 %2 % des Steigfaktors, unsere Annahme</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>%1 (!)</source>
        <translation>%1 (!)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what a sheet shows, its key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (g)</source>
        <translation>%1 (g)</translation>
    </message>
    <message>
        <source>%1 (in)</source>
        <translation>%1 (in)</translation>
    </message>
    <message>
        <source>%1 (lb)</source>
        <translation>%1 (lb)</translation>
    </message>
    <message>
        <source>%1 (mm)</source>
        <translation>%1 (mm)</translation>
    </message>
    <message>
        <source>%1 (this job’s)</source>
        <translation>%1 (dieses Auftrags)</translation>
    </message>
    <message>
        <source>%1 At that height its edge looked %2 % larger, and a side of it was seen: %3 × %4 in the photo. Both are taken out.</source>
        <translation>%1 In dieser Höhe sah die Kante %2 % größer aus, und eine Seite war zu sehen: %3 × %4 im Foto. Beides ist herausgerechnet.</translation>
    </message>
    <message>
        <source>%1 At that height its edge looked %2 % larger: %3 × %4 in the photo. This is taken out.</source>
        <translation>%1 In dieser Höhe sah die Kante %2 % größer aus: %3 × %4 im Foto. Das ist herausgerechnet.</translation>
    </message>
    <message>
        <source>%1 The nearest edge of the insert is %2 away.</source>
        <translation>%1 Der nächste Rand des Einsatzes ist %2 entfernt.</translation>
    </message>
    <message>
        <source>%1 They reach %2 past the insert’s edge.</source>
        <translation>%1 Sie reichen %2 über den Rand des Einsatzes.</translation>
    </message>
    <message>
        <source>%1 Until something is typed the fields hold what the label would make of it.</source>
        <translation>%1 Bis etwas eingegeben ist, zeigen die Felder, was nach Etikett herauskäme.</translation>
    </message>
    <message>
        <source>%1 air pockets keep their air, %2 in all</source>
        <translation>%1 Lufteinschlüsse behalten ihre Luft, zusammen %2</translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation>%1 nach hinten</translation>
    </message>
    <message>
        <source>%1 batches side by side</source>
        <translation>%1 Ansätze nebeneinander</translation>
    </message>
    <message>
        <source>%1 batches, each like this, mixed side by side: a person and a mixer each.</source>
        <translation>%1 Ansätze, jeder so, nebeneinander gemischt: je ein Mensch und ein Mischer.</translation>
    </message>
    <message>
        <source>%1 casts on the same holes: in an edge they strip after 3 to 5 drives (our guess). Shift the closures by half their spacing.</source>
        <translation>%1 Güsse auf denselben Löchern: In einer Kante reißen sie nach 3 bis 5 Mal aus (unsere Annahme). Die Verschlüsse um den halben Abstand versetzen.</translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation>%1 gewählt</translation>
    </message>
    <message>
        <source>%1 closures</source>
        <translation>%1 Verschlüsse</translation>
    </message>
    <message>
        <source>%1 closures, %2 people closing.</source>
        <translation>%1 Verschlüsse, %2 Leute schließen.</translation>
    </message>
    <message>
        <source>%1 closures, one person closing.</source>
        <translation>%1 Verschlüsse, einer schließt.</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>%1 Ecken</translation>
    </message>
    <message>
        <source>%1 cups: rise ×%2 in the mean, standard deviation %3, ± %4 % from the least to the greatest; ± %5 % is reckoned with, never less than 4 % (our guess).</source>
        <translation>%1 Becher: Steigfaktor im Mittel ×%2, Standardabweichung %3, ± %4 % vom kleinsten zum größten; gerechnet wird mit ± %5 %, nie unter 4 % (unsere Annahme).</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 enthält</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 is out of range: %2 to %3</source>
        <translation>%1 liegt außerhalb: %2 bis %3</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 lost to uneven readings, %2 to corners out of square</source>
        <translation>%1 verloren durch ungleiche Maße, %2 durch schiefe Ecken</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 objects added. </source>
        <translation>%1 Gegenstände hinzugefügt. </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 placed</source>
        <translation>%1 von %2 platziert</translation>
    </message>
    <message>
        <source>%1 of %2 rows are read; the others stay here, with why beside them.</source>
        <translation>%1 von %2 Zeilen sind gelesen; die anderen bleiben hier, der Grund steht daneben.</translation>
    </message>
    <message>
        <source>%1 of %2 vented</source>
        <translation>%1 von %2 entlüftet</translation>
    </message>
    <message>
        <source>%1 pattern blocks</source>
        <translation>%1 Musterklötze</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 Leute</translation>
    </message>
    <message>
        <source>%1 pockets, %2 × %3 over all.</source>
        <translation>%1 Aussparungen, %2 × %3 gesamt.</translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 stiffeners</source>
        <translation>%1 Versteifungen</translation>
    </message>
    <message>
        <source>%1 still to do. </source>
        <translation>%1 noch zu tun. </translation>
    </message>
    <message>
        <source>%1 takes %2 of %3</source>
        <translation>%1 nimmt %2 von %3</translation>
    </message>
    <message>
        <source>%1 takes all %2</source>
        <translation>%1 nimmt alle %2</translation>
    </message>
    <message>
        <source>%1 tiles, %2, rows from the front</source>
        <translation>%1 Teilblätter, %2, Reihen von vorn</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation>zu bedenken: %1</translation>
    </message>
    <message>
        <source>%1 to mend</source>
        <translation>zu beheben: %1</translation>
    </message>
    <message>
        <source>%1 to mend in the checks: mend before you cut</source>
        <translation>%1 zu beheben in den Prüfungen: vor dem Zuschnitt beheben</translation>
    </message>
    <message>
        <source>%1 to mend, %2 to look at</source>
        <translation>%1 zu beheben, %2 zu bedenken</translation>
    </message>
    <message>
        <source>%1 to mend: do not cast yet</source>
        <translation>%1 zu beheben: noch nicht gießen</translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>%1 too late</source>
        <translation>%1 zu spät</translation>
    </message>
    <message>
        <source>%1 ± %2 %3</source>
        <comment>length, doubt, unit</comment>
        <translation>%1 ± %2 %3</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, ⌀%2</source>
        <translation>%1, ⌀%2</translation>
    </message>
    <message>
        <source>1 pc %1</source>
        <translation>1 Stück %1</translation>
    </message>
    <message>
        <source>%1 × %2 at hand</source>
        <translation>%1 × %2 vorhanden</translation>
    </message>
    <message>
        <source>%1 × %2 × %3, %4 deep</source>
        <translation>%1 × %2 × %3, %4 tief</translation>
    </message>
    <message>
        <source>%1 × %2, %3 high</source>
        <translation>%1 × %2, %3 hoch</translation>
    </message>
    <message>
        <source>%1, glued on</source>
        <translation>%1, aufgeleimt</translation>
    </message>
    <message>
        <source>%1 × %2, insert %3</source>
        <translation>%1 × %2, Einsatz %3</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, lose</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 deep, zone %3</source>
        <translation>%1, %2 tief, Feld %3</translation>
    </message>
    <message>
        <source>%1, %2 × %3 %4</source>
        <comment>name, length, width, unit</comment>
        <translation>%1, %2 × %3 %4</translation>
    </message>
    <message>
        <source>%1, %2 × %3 (%4)</source>
        <translation>%1, %2 × %3 (%4)</translation>
    </message>
    <message>
        <source>%1, %2, %3 of %4 placed</source>
        <translation>%1, %2, %3 von %4 platziert</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2, %n to mend</source>
        <translation>
            <numerusform>%1, %2, %n zu beheben</numerusform>
            <numerusform>%1, %2, %n zu beheben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2, zone %3</source>
        <translation>%1, %2, Feld %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 long; figures from its %4 end</source>
        <translation>%1, %2: %3 lang; Maße vom Ende %4</translation>
    </message>
    <message>
        <source>%1, piece %2 of %3:  %4</source>
        <translation>%1, Stück %2 von %3:  %4</translation>
    </message>
    <message>
        <source>%1, by the cup</source>
        <translation>%1, nach Becher</translation>
    </message>
    <message>
        <source>%1, by the label</source>
        <translation>%1, nach Etikett</translation>
    </message>
    <message>
        <source>%1, corrected for %2</source>
        <translation>%1, korrigiert um %2</translation>
    </message>
    <message>
        <source>%1, locked</source>
        <translation>%1, festgehalten</translation>
    </message>
    <message>
        <source>%1, on through wall and base</source>
        <translation>%1, ganz durch</translation>
    </message>
    <message>
        <source>%1, one with its neighbor?</source>
        <comment>an outline</comment>
        <translation>%1, eins mit dem Nachbarn?</translation>
    </message>
    <message>
        <source>%1, own</source>
        <translation>%1, eigener</translation>
    </message>
    <message>
        <source>%1, with shadow?</source>
        <comment>an outline</comment>
        <translation>%1, mit Schatten?</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 % more pocket, up to %3 further out</source>
        <translation>%1: %2 % mehr Aussparung, bis %3 weiter außen</translation>
    </message>
    <message>
        <source>%1: %2 of %3 placed</source>
        <comment>tooltip</comment>
        <translation>%1: %2 von %3 platziert</translation>
    </message>
    <message>
        <source>%1; %2 across, %3 front to back</source>
        <translation>%1; %2 quer, %3 von vorn nach hinten</translation>
    </message>
    <message>
        <source>&amp;About Drawercast</source>
        <translation>Ü&amp;ber Drawercast</translation>
    </message>
    <message>
        <source>&amp;Add a vent</source>
        <translation>Entlüftungsloch &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Align</source>
        <translation>Ausri&amp;chten</translation>
    </message>
    <message>
        <source>&amp;All found</source>
        <translation>&amp;Alle gefundenen</translation>
    </message>
    <message>
        <source>&amp;Along</source>
        <translation>&amp;Entlang</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Höhenlage</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>&amp;Arc height</source>
        <translation>Stich&amp;höhe</translation>
    </message>
    <message>
        <source>&amp;As built…</source>
        <translation>Auf&amp;maß der Form…</translation>
    </message>
    <message>
        <source>&amp;Back to what was</source>
        <translation>&amp;Zurück zum Vorigen</translation>
    </message>
    <message>
        <source>&amp;Board of the plate</source>
        <translation>&amp;Platte der Druckplatte</translation>
    </message>
    <message>
        <source>&amp;Box and cuts</source>
        <translation>&amp;Kasten und Zuschnitte</translation>
    </message>
    <message>
        <source>&amp;Bucket</source>
        <translation>&amp;Eimer</translation>
    </message>
    <message>
        <source>&amp;Buckets</source>
        <translation>&amp;Eimer</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheit</translation>
    </message>
    <message>
        <source>&amp;Choose a photo…</source>
        <translation>&amp;Foto wählen…</translation>
    </message>
    <message>
        <source>&amp;Closures</source>
        <translation>&amp;Verschlüsse</translation>
    </message>
    <message>
        <source>&amp;Columns</source>
        <translation>&amp;Spalten</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>Ko&amp;pieren</translation>
    </message>
    <message>
        <source>&amp;Corner radius</source>
        <translation>&amp;Eckenradius</translation>
    </message>
    <message>
        <source>&amp;Cost and quote…</source>
        <translation>K&amp;osten und Angebot…</translation>
    </message>
    <message>
        <source>&amp;Crush by hand after demolding</source>
        <translation>Nach dem &amp;Entformen von Hand walken</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Decimals like</source>
        <translation>&amp;Dezimalen wie</translation>
    </message>
    <message>
        <source>&amp;Demold after</source>
        <translation>&amp;Entformen nach</translation>
    </message>
    <message>
        <source>&amp;Depth</source>
        <translation>&amp;Tiefe</translation>
    </message>
    <message>
        <source>&amp;Depth of the box</source>
        <translation>&amp;Tiefe des Kastens</translation>
    </message>
    <message>
        <source>&amp;Distance</source>
        <translation>Abstan&amp;d</translation>
    </message>
    <message>
        <source>&amp;Don’t save</source>
        <translation>&amp;Nicht speichern</translation>
    </message>
    <message>
        <source>&amp;Drawer plan</source>
        <translation>Sc&amp;hubladenplan</translation>
    </message>
    <message>
        <source>&amp;Drawers</source>
        <translation>&amp;Schubladen</translation>
    </message>
    <message>
        <source>&amp;Drawings…</source>
        <translation>&amp;Zeichnungen…</translation>
    </message>
    <message>
        <source>&amp;Drill of the vent</source>
        <translation>&amp;Bohrer des Entlüftungslochs</translation>
    </message>
    <message>
        <source>&amp;Duplicate object</source>
        <translation>Gegenstand &amp;verdoppeln</translation>
    </message>
    <message>
        <source>&amp;Edge at least</source>
        <translation>&amp;Rand mindestens</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Equal walls, left to right</source>
        <translation>Gleiche Stege, &amp;von links nach rechts</translation>
    </message>
    <message>
        <source>&amp;Find an object</source>
        <translation>Gegenstand s&amp;uchen</translation>
    </message>
    <message>
        <source>&amp;Fit a side</source>
        <translation>&amp;Passung je Seite</translation>
    </message>
    <message>
        <source>&amp;Floor at least</source>
        <translation>&amp;Boden mindestens</translation>
    </message>
    <message>
        <source>&amp;Foam…</source>
        <translation>S&amp;chaum…</translation>
    </message>
    <message>
        <source>&amp;Gap all around</source>
        <translation>&amp;Spalt ringsum</translation>
    </message>
    <message>
        <source>&amp;Glued onto the plate</source>
        <translation>&amp;Auf die Druckplatte geleimt</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;Half risen</source>
        <translation>&amp;Halb aufgeschäumt</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Hotter than the parts</source>
        <translation>&amp;Heißer als die Komponenten</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Wie viele</translation>
    </message>
    <message>
        <source>&amp;Inches, decimal</source>
        <translation>&amp;Zoll, dezimal</translation>
    </message>
    <message>
        <source>&amp;Insert</source>
        <translation>E&amp;insatz</translation>
    </message>
    <message>
        <source>&amp;Insert&apos;s thickness</source>
        <translation>Di&amp;cke des Einsatzes</translation>
    </message>
    <message>
        <source>&amp;Inside diameter</source>
        <translation>&amp;Innendurchmesser</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>&amp;Auftrag</translation>
    </message>
    <message>
        <source>&amp;Keep the best so far</source>
        <translation>&amp;Bisher Bestes behalten</translation>
    </message>
    <message>
        <source>Ker&amp;f</source>
        <translation>Sch&amp;nittbreite</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <source>&amp;Length in the mold</source>
        <translation>&amp;Länge in der Form</translation>
    </message>
    <message>
        <source>&amp;Length, along x</source>
        <translation>Länge, &amp;entlang x</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Liquid poured</source>
        <translation>&amp;Flüssig eingefüllt</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Festhalten</translation>
    </message>
    <message>
        <source>&amp;Long side</source>
        <translation>&amp;Lange Seite</translation>
    </message>
    <message>
        <source>&amp;Markup</source>
        <translation>&amp;Aufschlag</translation>
    </message>
    <message>
        <source>&amp;Margin on the pressure</source>
        <translation>Zuschlag auf &amp;den Druck</translation>
    </message>
    <message>
        <source>&amp;Mass of one</source>
        <translation>&amp;Masse eines</translation>
    </message>
    <message>
        <source>&amp;Measure a distance</source>
        <translation>&amp;Abstand messen</translation>
    </message>
    <message>
        <source>&amp;Millimeters</source>
        <translation>&amp;Millimeter</translation>
    </message>
    <message>
        <source>&amp;Mixed</source>
        <translation>Gemis&amp;cht</translation>
    </message>
    <message>
        <source>&amp;Mixer takes</source>
        <translation>&amp;Mischer nimmt</translation>
    </message>
    <message>
        <source>&amp;Mixing</source>
        <translation>&amp;Mischen</translation>
    </message>
    <message>
        <source>&amp;Mold</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;New job…</source>
        <translation>Neue&amp;r Auftrag…</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>&amp;Number of them</source>
        <translation>A&amp;nzahl davon</translation>
    </message>
    <message>
        <source>&amp;Objects</source>
        <translation>&amp;Gegenstände</translation>
    </message>
    <message>
        <source>&amp;Odd blocks</source>
        <translation>&amp;Abweichende Klötze</translation>
    </message>
    <message>
        <source>&amp;On</source>
        <translation>&amp;Auf</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Orientation of the tiles</source>
        <translation>Aus&amp;richtung der Teilblätter</translation>
    </message>
    <message>
        <source>&amp;Overpack</source>
        <translation>&amp;Überfüllung</translation>
    </message>
    <message>
        <source>&amp;Parts&apos; temperature</source>
        <translation>Temperatur der &amp;Komponenten</translation>
    </message>
    <message>
        <source>&amp;Paste from clipboard</source>
        <translation>Aus der &amp;Zwischenablage</translation>
    </message>
    <message>
        <source>&amp;Pigment</source>
        <translation>&amp;Pigment</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Platzieren</translation>
    </message>
    <message>
        <source>&amp;Place in the drawer</source>
        <translation>In &amp;die Schublade platzieren</translation>
    </message>
    <message>
        <source>&amp;Place the other vents</source>
        <translation>Andere Entlüftungslöcher &amp;platzieren</translation>
    </message>
    <message>
        <source>&amp;Plugs of vents</source>
        <translation>&amp;Zapfen der Entlüftungslöcher</translation>
    </message>
    <message>
        <source>&amp;Pot life</source>
        <translation>To&amp;pfzeit</translation>
    </message>
    <message>
        <source>&amp;Pour day</source>
        <translation>&amp;Gießtag</translation>
    </message>
    <message>
        <source>&amp;Pouring takes</source>
        <translation>Gießen daue&amp;rt</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Druc&amp;ken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Been&amp;den</translation>
    </message>
    <message>
        <source>&amp;Radius of the clay fillets</source>
        <translation>&amp;Radius der Hohlkehlen</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>Wi&amp;ederholen</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>Wi&amp;ederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Release used</source>
        <translation>Trennmittel &amp;verbraucht</translation>
    </message>
    <message>
        <source>&amp;Resolution</source>
        <translation>A&amp;uflösung</translation>
    </message>
    <message>
        <source>&amp;Risen after</source>
        <translation>Aufge&amp;schäumt nach</translation>
    </message>
    <message>
        <source>&amp;Risen to</source>
        <translation>Gestiegen &amp;bis</translation>
    </message>
    <message>
        <source>&amp;Rows</source>
        <translation>&amp;Reihen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>&amp;Sets in the run</source>
        <translation>&amp;Sätze in der Serie</translation>
    </message>
    <message>
        <source>&amp;Setting the plate</source>
        <translation>Druckplatte &amp;auflegen</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>&amp;Blätter</translation>
    </message>
    <message>
        <source>&amp;Short side</source>
        <translation>&amp;Kurze Seite</translation>
    </message>
    <message>
        <source>&amp;Shrinks by</source>
        <translation>Sch&amp;windet um</translation>
    </message>
    <message>
        <source>&amp;Shrinks by %1 ± %2 (%3), now %4</source>
        <translation>Sch&amp;windet um %1 ± %2 (%3), jetzt %4</translation>
    </message>
    <message>
        <source>&amp;Side to the next</source>
        <translation>&amp;Seite zur nächsten</translation>
    </message>
    <message>
        <source>&amp;Starts to rise (cream time)</source>
        <translation>Beginnt zu &amp;steigen (Startzeit)</translation>
    </message>
    <message>
        <source>&amp;Stiffeners</source>
        <translation>V&amp;ersteifungen</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>&amp;Templates…</source>
        <translation>Scha&amp;blonen…</translation>
    </message>
    <message>
        <source>&amp;Trimmings</source>
        <translation>&amp;Beschnitt</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>Einhei&amp;ten</translation>
    </message>
    <message>
        <source>&amp;Use this cup in place of the label</source>
        <translation>&amp;Diesen Becher statt des Etiketts nehmen</translation>
    </message>
    <message>
        <source>&amp;Usual text size</source>
        <translation>&amp;Übliche Schriftgröße</translation>
    </message>
    <message>
        <source>&amp;Vents along walls every</source>
        <translation>Entlüftungslöcher &amp;je Wandlänge</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>A&amp;nsicht</translation>
    </message>
    <message>
        <source>&amp;Viscosity while rising</source>
        <translation>&amp;Viskosität beim Steigen</translation>
    </message>
    <message>
        <source>&amp;Viscosity: %1 ± %2 Pa·s (%3), now %4</source>
        <translation>&amp;Viskosität: %1 ± %2 Pa·s (%3), jetzt %4</translation>
    </message>
    <message>
        <source>&amp;Volume, dunked</source>
        <translation>&amp;Volumen, getaucht</translation>
    </message>
    <message>
        <source>&amp;Wall at least</source>
        <translation>&amp;Steg mindestens</translation>
    </message>
    <message>
        <source>&amp;Walls between columns</source>
        <translation>S&amp;tege zwischen Spalten</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>&amp;Where air stays</source>
        <translation>Wo Lu&amp;ft bleibt</translation>
    </message>
    <message>
        <source>&amp;Which drawer would do…</source>
        <translation>&amp;Welche Schublade ginge…</translation>
    </message>
    <message>
        <source>&amp;Widest edge at</source>
        <translation>&amp;Breiteste Kante bei</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>&amp;Width of the box</source>
        <translation>&amp;Breite des Kastens</translation>
    </message>
    <message>
        <source>&amp;Width, along y</source>
        <translation>B&amp;reite, entlang y</translation>
    </message>
    <message>
        <source>&amp;x</source>
        <translation>&amp;x</translation>
    </message>
    <message>
        <source>&amp;y</source>
        <translation>&amp;y</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>, %1 % over</source>
        <translation>, +%1 %</translation>
    </message>
    <message>
        <source>, %1 at stiffeners’ ends: %2</source>
        <translation>, %1 an den Enden der Versteifungen: %2</translation>
    </message>
    <message>
        <source>, %1 to look at</source>
        <translation>, %1 zu bedenken</translation>
    </message>
    <message>
        <source>, %1 stiffeners </source>
        <translation>, %1 Versteifungen </translation>
    </message>
    <message>
        <source>, and depth / </source>
        <translation>, und Tiefe / </translation>
    </message>
    <message>
        <source>, at </source>
        <translation>, bei </translation>
    </message>
    <message>
        <source>, continued</source>
        <translation>, Fortsetzung</translation>
    </message>
    <message>
        <source>, cover</source>
        <translation>, Deckblatt</translation>
    </message>
    <message>
        <source>, decides</source>
        <translation>, entscheidet</translation>
    </message>
    <message>
        <source>, glued on</source>
        <translation>, aufgeleimt</translation>
    </message>
    <message>
        <source>, keeps </source>
        <translation>, behält </translation>
    </message>
    <message>
        <source>, loose</source>
        <translation>, lose</translation>
    </message>
    <message>
        <source>, one stiffener %1%2</source>
        <translation>, eine Versteifung %1%2</translation>
    </message>
    <message>
        <source>, saw off %1</source>
        <translation>, %1 absägen</translation>
    </message>
    <message>
        <source>, through stiffener %1, %2 from its end</source>
        <translation>, durch Versteifung %1, %2 von ihrem Ende</translation>
    </message>
    <message>
        <source>, wrap %1</source>
        <translation>, Umfang %1</translation>
    </message>
    <message>
        <source>, zone %1</source>
        <translation>, Feld %1</translation>
    </message>
    <message>
        <source>.</source>
        <comment>decimal mark</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>0.1 L/s is common practice</source>
        <translation>0,1 L/s ist üblich</translation>
    </message>
    <message>
        <source>0.5 mm deeper, our guess</source>
        <translation>0,5 mm tiefer, unsere Annahme</translation>
    </message>
    <message>
        <source>0.5 mm less deep, our guess</source>
        <translation>0,5 mm weniger tief, unsere Annahme</translation>
    </message>
    <message>
        <source>1 : 1, true size</source>
        <translation>1 : 1, wahre Größe</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 Ansatz</translation>
    </message>
    <message>
        <source>1 object added. </source>
        <translation>1 Gegenstand hinzugefügt. </translation>
    </message>
    <message>
        <source>1 tile</source>
        <translation>1 Teilblatt</translation>
    </message>
    <message>
        <source>100 mm</source>
        <translation>100 mm</translation>
    </message>
    <message>
        <source>100 mm along the paper’s long side measure</source>
        <translation>100 mm entlang der langen Papierseite messen</translation>
    </message>
    <message>
        <source>100 mm along the paper’s short side measure</source>
        <translation>100 mm entlang der kurzen Papierseite messen</translation>
    </message>
    <message>
        <source>100 mm must measure 100 mm, along and across;</source>
        <translation>100 mm müssen 100 mm messen, längs und quer;</translation>
    </message>
    <message>
        <source>100 mm scales &amp;measure, on its short and long side</source>
        <translation>Maßstäbe von 100 mm &amp;messen, kurze und lange Seite</translation>
    </message>
    <message>
        <source>1:1 template</source>
        <translation>Schablone 1:1</translation>
    </message>
    <message>
        <source>3 pre-started, 5 not (common practice)</source>
        <translation>3 vorher angesetzt, 5 nicht (üblich)</translation>
    </message>
    <message>
        <source>4 in</source>
        <translation>4 in</translation>
    </message>
    <message>
        <source>40 mL, or 4 % of the batch where that is more</source>
        <translation>40 mL oder 4 % des Ansatzes, wo das mehr ist</translation>
    </message>
    <message>
        <source>6 × moment / thickness² in a board, moment / section modulus in a stiffener.</source>
        <translation>6 × Moment / Dicke² in einer Platte, Moment / Widerstandsmoment in einer Versteifung.</translation>
    </message>
    <message>
        <source>8 is common practice</source>
        <translation>8 ist üblich</translation>
    </message>
    <message>
        <source>82,5</source>
        <translation>82,5</translation>
    </message>
    <message>
        <source>82.5</source>
        <translation>82.5</translation>
    </message>
    <message>
        <source>; %1 closures %2</source>
        <translation>; %1 Verschlüsse %2</translation>
    </message>
    <message>
        <source>; %1 cm²</source>
        <translation>; %1 cm²</translation>
    </message>
    <message>
        <source>; %1 empty, not printed</source>
        <translation>; %1 leer, nicht gedruckt</translation>
    </message>
    <message>
        <source>; the arc’s radius is %1</source>
        <translation>; der Radius des Bogens ist %1</translation>
    </message>
    <message>
        <source>; the mold is that much larger</source>
        <translation>; die Form ist um so viel größer</translation>
    </message>
    <message>
        <source>; this piece %1 to %2, join at the dash-dot line</source>
        <translation>; dieses Stück %1 bis %2, an der Strichpunktlinie anlegen</translation>
    </message>
    <message>
        <source>; tick: a third of what one holds, </source>
        <translation>; Strich: ein Drittel dessen, was einer hält, </translation>
    </message>
    <message>
        <source>&lt;b&gt;This can’t be measured.&lt;/b&gt; %1.</source>
        <translation>&lt;b&gt;Das lässt sich nicht messen.&lt;/b&gt; %1.</translation>
    </message>
    <message>
        <source>A PDF file</source>
        <translation>Eine PDF-Datei</translation>
    </message>
    <message>
        <source>A and B, %1</source>
        <translation>A und B, %1</translation>
    </message>
    <message>
        <source>A closed mold stands under pressure and can burst. Nobody leans or stands over it; open it only when the foam has cured.</source>
        <translation>Eine geschlossene Form steht unter Druck und kann bersten. Niemand beugt sich darüber oder steht darüber; erst öffnen, wenn der Schaum ausgehärtet ist.</translation>
    </message>
    <message>
        <source>Saw, drill and blade: guards on, push stick, eye and ear protection; no gloves, no loose sleeves at saw or drill; cut away from the hand. Sawing board and foam makes dust: extraction and a dust mask. Never cut or shape foam with heat: the fumes are poisonous.</source>
        <translation>Säge, Bohrer, Klinge: Schutzhauben, Schiebestock, Augen- und Gehörschutz; an Säge und Bohrmaschine keine Handschuhe, keine losen Ärmel; vom Körper weg schneiden. Beim Sägen von Platten und Schaum entsteht Staub: absaugen, Staubmaske. Schaum nie mit Hitze schneiden oder formen: giftige Dämpfe.</translation>
    </message>
    <message>
        <source>A closure of its own at each end of a stiffener takes the most: the worst pull falls by a good third.</source>
        <translation>Ein eigener Verschluss an jedem Ende einer Versteifung nimmt das meiste: Die größte Zugkraft sinkt um gut ein Drittel.</translation>
    </message>
    <message>
        <source>A copy of “%1”, without a name yet.</source>
        <translation>Eine Kopie von „%1“, noch ohne Namen.</translation>
    </message>
    <message>
        <source>A cup poured today tells how far this foam rises here and now. With it the pour is dosed closer, and less has to be held down.</source>
        <translation>Ein heute gegossener Becher sagt, wie weit dieser Schaum hier und jetzt aufschäumt. Damit wird genauer dosiert, und es ist weniger niederzuhalten.</translation>
    </message>
    <message>
        <source>A cup rises a little less than a large mold, as its wall cools it.</source>
        <translation>Ein Becher schäumt etwas weniger auf als eine große Form, weil seine Wand ihn kühlt.</translation>
    </message>
    <message>
        <source>A day after</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>A drawer has no dose yet: the checks say why.</source>
        <translation>Eine Schublade hat noch keine Dosis: Die Prüfungen sagen, warum.</translation>
    </message>
    <message>
        <source>A gas&amp;ket strip on the box walls</source>
        <translation>Dich&amp;tband auf den Kastenwänden</translation>
    </message>
    <message>
        <source>A monotone cubic (Fritsch and Butland, 1984) through the times of your test cup.</source>
        <translation>Ein monotones Kubikpolynom (Fritsch und Butland, 1984) durch die Zeiten des Probebechers.</translation>
    </message>
    <message>
        <source>A notch slides along its pocket’s edge.</source>
        <translation>Eine Mulde gleitet am Rand ihrer Aussparung.</translation>
    </message>
    <message>
        <source>A plate that bends and shears (Mindlin), in finite elements; closures are springs, walls and fillers only push. Checked against printed tables and series.</source>
        <translation>Eine Platte, die sich biegt und schert (Mindlin), in finiten Elementen; Verschlüsse sind Federn, Wände und Füllstücke drücken nur. Gegen gedruckte Tafeln und Reihen geprüft.</translation>
    </message>
    <message>
        <source>A pour of this drawer is going on: its clock never stopped.</source>
        <translation>Ein Guss dieser Schublade läuft: Seine Uhr lief immer weiter.</translation>
    </message>
    <message>
        <source>A real mold differs by what the saw and the sealer take: the band allows for 0.5 mm of depth, our guess.</source>
        <translation>Eine wirkliche Form weicht ab um das, was Säge und Versiegelung nehmen: Die Spanne rechnet mit 0,5 mm Tiefe, unsere Annahme.</translation>
    </message>
    <message>
        <source>A set is one insert of each drawer; the first is ready after %1 shop days. Whole sheets, lumber and kits are charged, those on the shelf too. Hours are the run sheet’s, our guess.</source>
        <translation>Ein Satz ist ein Einsatz je Schublade; der erste ist nach %1 Werktagen fertig. Ganze Platten, Kanthölzer und Gebinde werden berechnet, auch vorhandene. Stunden vom Ablaufblatt, unsere Annahme.</translation>
    </message>
    <message>
        <source>A smooth start (3 v² − 2 v³) and a rise of first order that is 99 % done in the label’s time: both our guess.</source>
        <translation>Ein sanfter Anfang (3 v² − 2 v³) und ein Aufschäumen erster Ordnung, das in der Zeit des Etiketts zu 99 % fertig ist: beides unsere Annahme.</translation>
    </message>
    <message>
        <source>A straight cup</source>
        <translation>Gerader Becher</translation>
    </message>
    <message>
        <source>A straight cup of today’s foam, mixed as for the pour. With it the mold is dosed closer, and less has to be held down.</source>
        <translation>Ein gerader Becher vom heutigen Schaum, gemischt wie für den Guss. Damit wird die Form genauer dosiert, und es ist weniger niederzuhalten.</translation>
    </message>
    <message>
        <source>A tall slim wall folds</source>
        <translation>Ein hoher schmaler Steg knickt</translation>
    </message>
    <message>
        <source>A&amp;rrange</source>
        <translation>An&amp;ordnen</translation>
    </message>
    <message>
        <source>A&amp;xis below face</source>
        <translation>A&amp;chse unter Oberseite</translation>
    </message>
    <message>
        <source>A3, 297 × 420 mm</source>
        <translation>A3, 297 × 420 mm</translation>
    </message>
    <message>
        <source>A4, 210 × 297 mm</source>
        <translation>A4, 210 × 297 mm</translation>
    </message>
    <message>
        <source>About Drawercast</source>
        <translation>Über Drawercast</translation>
    </message>
    <message>
        <source>About how many, in all drawers</source>
        <translation>Etwa wie viele, in allen Schubladen</translation>
    </message>
    <message>
        <source>About, of the inserts</source>
        <translation>Etwa, von den Einsätzen</translation>
    </message>
    <message>
        <source>Above the sheet</source>
        <translation>Über dem Blatt</translation>
    </message>
    <message>
        <source>Acti&amp;vation energy</source>
        <translation>A&amp;ktivierungsenergie</translation>
    </message>
    <message>
        <source>Add %1 objects</source>
        <translation>%1 Gegenstände hinzufügen</translation>
    </message>
    <message>
        <source>Add 1 object</source>
        <translation>1 Gegenstand hinzufügen</translation>
    </message>
    <message>
        <source>Add a block (Insert)</source>
        <translation>Klotz hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a cast</source>
        <translation>Guss hinzufügen</translation>
    </message>
    <message>
        <source>Add a corner after this one (Insert)</source>
        <translation>Ecke nach dieser hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a cup</source>
        <translation>Becher hinzufügen</translation>
    </message>
    <message>
        <source>Add a cylinder after this one (Insert)</source>
        <translation>Zylinder nach diesem hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a d&amp;rawer…</source>
        <translation>Schub&amp;lade hinzufügen…</translation>
    </message>
    <message>
        <source>Add a height (Insert)</source>
        <translation>Höhe hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a kit (Insert)</source>
        <translation>Gebinde hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a level</source>
        <translation>Stufe hinzufügen</translation>
    </message>
    <message>
        <source>Add a pocket (Insert)</source>
        <translation>Aussparung hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add an object: %1</source>
        <translation>Gegenstand hinzufügen: %1</translation>
    </message>
    <message>
        <source>Add an obstruction</source>
        <translation>Hindernis hinzufügen</translation>
    </message>
    <message>
        <source>Add drawer</source>
        <translation>Schublade hinzufügen</translation>
    </message>
    <message>
        <source>Add object</source>
        <translation>Gegenstand hinzufügen</translation>
    </message>
    <message>
        <source>Add objects</source>
        <translation>Gegenstände hinzufügen</translation>
    </message>
    <message>
        <source>Add to the object list</source>
        <translation>In die Gegenstandsliste</translation>
    </message>
    <message>
        <source>Add vent</source>
        <translation>Entlüftungsloch hinzufügen</translation>
    </message>
    <message>
        <source>Added and locked. Drag it where you want it.</source>
        <translation>Hinzugefügt und festgehalten. An die gewünschte Stelle ziehen.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Align &amp;back edges</source>
        <translation>&amp;Hintere Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;front edges</source>
        <translation>&amp;Vordere Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;left edges</source>
        <translation>&amp;Linke Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;right edges</source>
        <translation>&amp;Rechte Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align back edges</source>
        <translation>Hintere Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align front edges</source>
        <translation>Vordere Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align left edges</source>
        <translation>Linke Kanten ausrichten</translation>
    </message>
    <message>
        <source>Align right edges</source>
        <translation>Rechte Kanten ausrichten</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>All %1 rows are read. Where no pocket depth is said, they go in %2 % of their height deep.</source>
        <translation>Alle %1 Zeilen sind gelesen. Wo keine Taschentiefe steht, kommen sie %2 % ihrer Höhe tief hinein.</translation>
    </message>
    <message>
        <source>All %1 rows are read. They go in %2 % of their height deep.</source>
        <translation>Alle %1 Zeilen sind gelesen. Sie kommen %2 % ihrer Höhe tief hinein.</translation>
    </message>
    <message>
        <source>All done.</source>
        <translation>Alles erledigt.</translation>
    </message>
    <message>
        <source>All figures are estimates from the values entered and stated. The material’s own data sheet, local codes and licensed practice come first.</source>
        <translation>Alle Zahlen sind Schätzungen aus den genannten eingegebenen Werten. Das Datenblatt des Materials, örtliche Vorschriften und Fachleute gehen vor.</translation>
    </message>
    <message>
        <source>All of a size</source>
        <translation>Alle gleich groß</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>&amp;Rearrange what is not locked</source>
        <translation>Nicht &amp;Festgehaltenes neu anordnen</translation>
    </message>
    <message>
        <source>All vents automatic</source>
        <translation>Alle Entlüftungslöcher automatisch</translation>
    </message>
    <message>
        <source>Along a wall; common practice is 50 to 75 mm without stiffeners</source>
        <translation>Entlang einer Wand; üblich sind 50 bis 75 mm ohne Versteifungen</translation>
    </message>
    <message>
        <source>An &amp;hour costs</source>
        <translation>Eine Stu&amp;nde kostet</translation>
    </message>
    <message>
        <source>An estimate: all gas shut in bubbles, nothing vented or dissolved, the liquid as it was.</source>
        <translation>Eine Schätzung: alles Gas in Blasen eingeschlossen, nichts entwichen oder gelöst, die Flüssigkeit unverändert.</translation>
    </message>
    <message>
        <source>An h&amp;our costs</source>
        <translation>Eine Stunde &amp;kostet</translation>
    </message>
    <message>
        <source>An object has up to %1 levels: the smallest outlines were left out.</source>
        <translation>Ein Gegenstand hat höchstens %1 Stufen: Die kleinsten Umrisse wurden weggelassen.</translation>
    </message>
    <message>
        <source>An outline has no name</source>
        <translation>Ein Umriss hat keinen Namen</translation>
    </message>
    <message>
        <source>An overpack of 10 to 25 % is common practice, no source; the limits of the band are our guess.</source>
        <translation>Überfüllung von 10 bis 25 % ist üblich, ohne Quelle; die Grenzen der Spanne sind unsere Annahme.</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Zerlegt</translation>
    </message>
    <message>
        <source>Around the foot of every block</source>
        <translation>Um den Fuß jedes Klotzes</translation>
    </message>
    <message>
        <source>Rearrange what is not locked</source>
        <translation>Nicht Festgehaltenes neu anordnen</translation>
    </message>
    <message>
        <source>Arrange for me</source>
        <translation>Anordnen lassen</translation>
    </message>
    <message>
        <source>Arrange in</source>
        <translation>Anordnen in</translation>
    </message>
    <message>
        <source>Place the rest over all drawers</source>
        <translation>Rest auf alle Schubladen verteilen</translation>
    </message>
    <message>
        <source>Place the rest</source>
        <translation>Rest platzieren</translation>
    </message>
    <message>
        <source>Arrhenius’ law with the foam’s activation energy, as entered.</source>
        <translation>Gesetz von Arrhenius mit der Aktivierungsenergie des Schaums, wie eingegeben.</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>As built</source>
        <translation>Aufmaß der Form</translation>
    </message>
    <message>
        <source>As ca&amp;st…</source>
        <translation>Guss&amp;ergebnis…</translation>
    </message>
    <message>
        <source>As cast</source>
        <translation>Gussergebnis</translation>
    </message>
    <message>
        <source>As few as leave no air pocket more than a little air, each at an air pocket; then, where none is near, one in each corner and along the box walls.</source>
        <translation>So wenige, dass in keinem Lufteinschluss mehr als ein wenig Luft bleibt, je eines pro Einschluss; dann, wo keines in der Nähe ist, eines in jeder Ecke und entlang der Kastenwände.</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie gefunden</translation>
    </message>
    <message>
        <source>As it was before the last change; working it out again, %1 %</source>
        <translation>Wie vor der letzten Änderung; wird neu berechnet, %1 %</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Wie der &amp;Desktop</translation>
    </message>
    <message>
        <source>As uncertain as the foam’s viscosity: half or twice as much is quite possible. A cast tells it.</source>
        <translation>So unsicher wie die Viskosität des Schaums: Halb oder doppelt so viel ist gut möglich. Ein Guss sagt es.</translation>
    </message>
    <message>
        <source>At &amp;temperature</source>
        <translation>Bei &amp;Temperatur</translation>
    </message>
    <message>
        <source>At any angle</source>
        <translation>In jedem Winkel</translation>
    </message>
    <message>
        <source>At the &amp;bottom too</source>
        <translation>Auch am &amp;Boden</translation>
    </message>
    <message>
        <source>At the top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Auto: the more of 40 mL and 4 % (common practice)</source>
        <translation>Auto: das Größere von 40 mL und 4 % (üblich)</translation>
    </message>
    <message>
        <source>Auto: times halve with each 10 °C more (common practice)</source>
        <translation>Auto: je 10 °C mehr halbieren sich die Zeiten (üblich)</translation>
    </message>
    <message>
        <source>Automatic overpack</source>
        <translation>Überfüllung automatisch</translation>
    </message>
    <message>
        <source>Automatic: the usual overpack, raised by 1 % until the mold fills at the low end.</source>
        <translation>Automatisch: die übliche Überfüllung, je 1 % erhöht, bis die Form am unteren Ende gefüllt ist.</translation>
    </message>
    <message>
        <source>B&amp;ow of the underside</source>
        <translation>&amp;Durchbiegung der Unterseite</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation>HINTEN</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Back left to front right</source>
        <translation>Hinten links nach vorn rechts</translation>
    </message>
    <message>
        <source>Bands: the rise at which the foam arrives. Rings: where it shuts air in, and the rise at which that goes. %1 vents let it out; what stays is %2 and counts in the pressure. Foam squeezed out of them unpegged: %3.</source>
        <translation>Bänder: der Steigfaktor, bei dem der Schaum ankommt. Ringe: wo er Luft einschließt, und der Steigfaktor, bei dem sie geht. %1 Entlüftungslöcher lassen sie hinaus; was bleibt, ist %2 und zählt im Druck mit. Austritt, wenn nicht zugestöpselt: %3.</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Grundplatte</translation>
    </message>
    <message>
        <source>Base, to drill</source>
        <translation>Grundplatte, zum Bohren</translation>
    </message>
    <message>
        <source>Before anything is measured: about what would it cost?</source>
        <translation>Bevor gemessen wird: Was würde es etwa kosten?</translation>
    </message>
    <message>
        <source>Begin the pour</source>
        <translation>Guss beginnen</translation>
    </message>
    <message>
        <source>Below the insert’s face</source>
        <translation>Unter der Oberseite des Einsatzes</translation>
    </message>
    <message>
        <source>Between two pockets</source>
        <translation>Zwischen zwei Aussparungen</translation>
    </message>
    <message>
        <source>Form to write measures on</source>
        <translation>Aufmaßblatt zum Ausfüllen</translation>
    </message>
    <message>
        <source>Form to write measures on…</source>
        <translation>Aufmaßblatt zum Ausfüllen…</translation>
    </message>
    <message>
        <source>White paper, A4</source>
        <translation>Weißes Papier, A4</translation>
    </message>
    <message>
        <source>White paper, Letter</source>
        <translation>Weißes Papier, Letter</translation>
    </message>
    <message>
        <source>White paper, other size</source>
        <translation>Weißes Papier, andere Größe</translation>
    </message>
    <message>
        <source>Blocks are cut smaller by it</source>
        <translation>Um sie werden Klötze kleiner gesägt</translation>
    </message>
    <message>
        <source>Blocks are drawn dashed: trace them from the pattern board’s template.</source>
        <translation>Klötze sind gestrichelt: von der Schablone der Musterplatte anreißen.</translation>
    </message>
    <message>
        <source>Blocks of </source>
        <translation>Klötze von </translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Board with the outline</source>
        <translation>Brett mit dem Umriss</translation>
    </message>
    <message>
        <source>Boards, as sawn</source>
        <translation>Platten, wie gesägt</translation>
    </message>
    <message>
        <source>Boards, lumber and tubes</source>
        <translation>Platten, Kantholz und Rohre</translation>
    </message>
    <message>
        <source>Bow and gap at %1 (closed), stress and pull at %2 (to build for). Estimates.</source>
        <translation>Durchbiegung und Spalt bei %1 (geschlossen), Spannung und Zug bei %2 (Bemessungsdruck). Schätzungen.</translation>
    </message>
    <message>
        <source>Box and cuts</source>
        <translation>Kasten und Zuschnitte</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Kästen</translation>
    </message>
    <message>
        <source>Boyle’s law for the gas; air pressure by ISO 2533, the standard atmosphere.</source>
        <translation>Gesetz von Boyle für das Gas; Luftdruck nach ISO 2533, Normatmosphäre.</translation>
    </message>
    <message>
        <source>Brush in</source>
        <translation>Pinsel: dazu</translation>
    </message>
    <message>
        <source>Brush out</source>
        <translation>Pinsel: weg</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Built in: %1</source>
        <translation>Eingebaut: %1</translation>
    </message>
    <message>
        <source>By Arrange; by hand any turn can be given</source>
        <translation>Beim Anordnen; von Hand geht jede Drehung</translation>
    </message>
    <message>
        <source>By how much the plate may come on later and still as many closures are in, at every moment of the rise, as the pressure to build for needs; and once more with foam a fifth quicker.</source>
        <translation>Um wie viel später die Druckplatte aufgelegt werden darf, sodass in jedem Moment des Aufschäumens so viele Verschlüsse angezogen sind, wie der Bemessungsdruck verlangt; und noch einmal mit Schaum, der ein Fünftel schneller ist.</translation>
    </message>
    <message>
        <source>By its inside &amp;size</source>
        <translation>Nach &amp;Innenmaß</translation>
    </message>
    <message>
        <source>By mouse</source>
        <translation>Mit der Maus</translation>
    </message>
    <message>
        <source>By quarters</source>
        <translation>In Vierteln</translation>
    </message>
    <message>
        <source>By the label: foam and day may differ by ± 10 %, our guess. A test cup narrows that to ± 4 %.</source>
        <translation>Nach Etikett: Schaum und Tag können um ± 10 % abweichen, unsere Annahme. Ein Probebecher verengt das auf ± 4 %.</translation>
    </message>
    <message>
        <source>The isocyanate; by volume</source>
        <translation>Das Isocyanat; nach Volumen</translation>
    </message>
    <message>
        <source>The other part; by volume</source>
        <translation>Die andere; nach Volumen</translation>
    </message>
    <message>
        <source>C&amp;hoose pockets from a list…</source>
        <translation>Aussparungen aus einer Liste &amp;wählen…</translation>
    </message>
    <message>
        <source>C&amp;loses at</source>
        <translation>S&amp;chließt um</translation>
    </message>
    <message>
        <source>C&amp;orners</source>
        <translation>E&amp;cken</translation>
    </message>
    <message>
        <source>C&amp;orners of the box</source>
        <translation>E&amp;cken des Kastens</translation>
    </message>
    <message>
        <source>C&amp;ylinders, along x</source>
        <translation>Z&amp;ylinder, entlang x</translation>
    </message>
    <message>
        <source>Camera straight above or nearly, half a meter away,</source>
        <translation>Kamera gerade oder fast darüber, einen halben Meter weg,</translation>
    </message>
    <message>
        <source>Can be read in two ways. Type it without a thousands mark</source>
        <translation>Zweideutig. Ohne Tausenderzeichen eingeben</translation>
    </message>
    <message>
        <source>Cast %1</source>
        <translation>Guss %1</translation>
    </message>
    <message>
        <source>Casts and their molds, masses in g</source>
        <translation>Güsse und ihre Formen, Massen in g</translation>
    </message>
    <message>
        <source>Casts of this foam together</source>
        <translation>Güsse dieses Schaums zusammen</translation>
    </message>
    <message>
        <source>Casts: %1. Release: %2, clay renewed: %3.</source>
        <translation>Güsse: %1. Trennmittel: %2, Hohlkehlen erneuert: %3.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Cells separated &amp;by</source>
        <translation>Zellen &amp;getrennt durch</translation>
    </message>
    <message>
        <source>Cells separated by</source>
        <translation>Zellen getrennt durch</translation>
    </message>
    <message>
        <source>Center from the front</source>
        <translation>Mitte von vorn</translation>
    </message>
    <message>
        <source>Center from the left</source>
        <translation>Mitte von links</translation>
    </message>
    <message>
        <source>Centers in line</source>
        <translation>Mitten auf eine Linie</translation>
    </message>
    <message>
        <source>Centers in line, front to back</source>
        <translation>Mitten auf eine Linie, von vorn nach hinten</translation>
    </message>
    <message>
        <source>Centers in line, left to right</source>
        <translation>Mitten auf eine Linie, von links nach rechts</translation>
    </message>
    <message>
        <source>Chan&amp;ge the drawer…</source>
        <translation>Schublade ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Change drawer</source>
        <translation>Schublade ändern</translation>
    </message>
    <message>
        <source>Change notch</source>
        <translation>Mulde ändern</translation>
    </message>
    <message>
        <source>Change object</source>
        <translation>Gegenstand ändern</translation>
    </message>
    <message>
        <source>Changed on disk</source>
        <translation>Datei wurde geändert</translation>
    </message>
    <message>
        <source>Check one outline with a caliper before you cut.</source>
        <translation>Vor dem Sägen einen Umriss mit dem Messschieber prüfen.</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Checks and foam: %1 to mend, %2 to look at, notes: %3</source>
        <translation>Prüfungen und Schaum: %1 zu beheben, %2 zu bedenken, Hinweise: %3</translation>
    </message>
    <message>
        <source>Checks of the whole job</source>
        <translation>Prüfungen des ganzen Auftrags</translation>
    </message>
    <message>
        <source>Checks of this drawer that say that something must be mended: %1. Pour all the same?</source>
        <translation>Prüfungen dieser Schublade, nach denen etwas zu beheben ist: %1. Trotzdem gießen?</translation>
    </message>
    <message>
        <source>Choose %1</source>
        <translation>%1 wählen</translation>
    </message>
    <message>
        <source>Choose a photo or a scan</source>
        <translation>Foto oder Scan wählen</translation>
    </message>
    <message>
        <source>Choose an outline in the photo or in the list.</source>
        <translation>Einen Umriss im Foto oder in der Liste wählen.</translation>
    </message>
    <message>
        <source>Choose none</source>
        <translation>Keine wählen</translation>
    </message>
    <message>
        <source>Choose outlines and drag their points; a double click on a side makes one, Delete takes the chosen one away</source>
        <translation>Umrisse wählen und ihre Punkte ziehen; ein Doppelklick auf eine Seite setzt einen, Entf nimmt den gewählten weg</translation>
    </message>
    <message>
        <source>Choose pockets from a list</source>
        <translation>Aussparungen aus einer Liste wählen</translation>
    </message>
    <message>
        <source>Choose the photo again</source>
        <translation>Das Foto noch einmal wählen</translation>
    </message>
    <message>
        <source>Chosen corner</source>
        <translation>Gewählte Ecke</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Cla&amp;y renewed</source>
        <translation>&amp;Hohlkehlen erneuert</translation>
    </message>
    <message>
        <source>Clay fillet</source>
        <translation>Hohlkehle</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Clear &amp;height</source>
        <translation>Lichte &amp;Höhe</translation>
    </message>
    <message>
        <source>Click or F8 to open</source>
        <translation>Klick oder F8 öffnet</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>Close the explanation</source>
        <translation>Erklärung schließen</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Closing the mold</source>
        <translation>Form schließen</translation>
    </message>
    <message>
        <source>Closures are numbered as they are tightened, and loosened in reverse. Drill them through the plate; with the plate on the box, drill the pilots into the box walls.</source>
        <translation>Verschlüsse tragen die Nummer, in der sie angezogen werden; umgekehrt lösen. Durch die Druckplatte bohren; mit der Druckplatte auf dem Kasten in die Kastenwände vorbohren.</translation>
    </message>
    <message>
        <source>Closures have the number in which they are tightened; loosen them in reverse.</source>
        <translation>Verschlüsse tragen die Nummer, in der sie angezogen werden; umgekehrt lösen.</translation>
    </message>
    <message>
        <source>Closures of the plates</source>
        <translation>Verschlüsse der Druckplatten</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>Comes out easily: %1 hold it, it weighs %2.</source>
        <translation>Geht leicht heraus: %1 halten es, es wiegt %2.</translation>
    </message>
    <message>
        <source>Common practice; those over air pockets come first</source>
        <translation>Üblich; die über Lufteinschlüssen gehen vor</translation>
    </message>
    <message>
        <source>Contents of the guide</source>
        <translation>Inhalt des Handbuchs</translation>
    </message>
    <message>
        <source>Copies in ro&amp;ws…</source>
        <translation>&amp;Kopien in Reihen…</translation>
    </message>
    <message>
        <source>Copies in rows</source>
        <translation>Kopien in Reihen</translation>
    </message>
    <message>
        <source>Copy rows in a spreadsheet and paste them here: name, length, width, height, mass, count. Units may stand in the header or in the cells.</source>
        <translation>Zeilen in einer Tabelle kopieren und hier einfügen: Name, Länge, Breite, Höhe, Masse, Anzahl. Einheiten dürfen in der Kopfzeile oder in den Zellen stehen.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>Corners and blocks</source>
        <translation>Ecken und Klötze</translation>
    </message>
    <message>
        <source>Corrected for “%1”: its 100 mm scales measured %2 mm along the paper’s short side, %3 mm along the long one. Printed elsewhere these pages are wrong.</source>
        <translation>Korrigiert für „%1“: Die Maßstäbe von 100 mm maßen %2 mm entlang der kurzen Papierseite, %3 mm entlang der langen. Anderswo gedruckt sind diese Seiten falsch.</translation>
    </message>
    <message>
        <source>Cost and quote</source>
        <translation>Kosten und Angebot</translation>
    </message>
    <message>
        <source>Cost of a set: one insert of each drawer</source>
        <translation>Kosten eines Satzes: ein Einsatz je Schublade</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Counterclockwise</source>
        <translation>Gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>Cover no mark. Tape the sheet to a flat board.</source>
        <translation>Keine Marke verdecken. Blatt auf ein ebenes Brett kleben.</translation>
    </message>
    <message>
        <source>Ctrl or Shift with a click chooses several.</source>
        <translation>Strg oder Umschalt mit Klick wählt mehrere.</translation>
    </message>
    <message>
        <source>Ctrl, held</source>
        <translation>Strg, gehalten</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>Cup %1</source>
        <translation>Becher %1</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschneiden</translation>
    </message>
    <message>
        <source>Cut one of two neighbors along the dash-dotted joint, lay it on the other so that the rings meet, and tape.</source>
        <translation>Einen von zwei Nachbarn an der Strichpunktlinie abschneiden, so auf den anderen legen, dass die Ringe sich decken, und kleben.</translation>
    </message>
    <message>
        <source>Cut sheets</source>
        <translation>Schnittpläne</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>Cuts are rounded to it</source>
        <translation>Schnitte werden darauf gerundet</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>D&amp;unkel</translation>
    </message>
    <message>
        <source>D&amp;elete object</source>
        <translation>Gegenstand l&amp;öschen</translation>
    </message>
    <message>
        <source>Data sheet</source>
        <translation>Datenblatt</translation>
    </message>
    <message>
        <source>Data sheet, from the start of mixing</source>
        <translation>Datenblatt, ab Mischbeginn</translation>
    </message>
    <message>
        <source>Data sheet; never taken shorter</source>
        <translation>Datenblatt; nie kürzer genommen</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>De&amp;pth</source>
        <translation>&amp;Tiefe</translation>
    </message>
    <message>
        <source>Decimals like</source>
        <translation>Dezimalen wie</translation>
    </message>
    <message>
        <source>Degrees, counterclockwise</source>
        <translation>Grad, gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Locked pockets stay: unlock them first.</source>
        <translation>Festgehaltene Taschen bleiben: zuerst freigeben.</translation>
    </message>
    <message>
        <source>Delete drawer</source>
        <translation>Schublade löschen</translation>
    </message>
    <message>
        <source>Delete object</source>
        <translation>Gegenstand löschen</translation>
    </message>
    <message>
        <source>Delete the dra&amp;wer</source>
        <translation>Schublade lös&amp;chen</translation>
    </message>
    <message>
        <source>Delete the drawer?</source>
        <translation>Schublade löschen?</translation>
    </message>
    <message>
        <source>Delete the object?</source>
        <translation>Gegenstand löschen?</translation>
    </message>
    <message>
        <source>Delete vent</source>
        <translation>Entlüftungsloch löschen</translation>
    </message>
    <message>
        <source>Deleted; the others stay where they are. “Place the other vents” in the menu brings the program’s back.</source>
        <translation>Gelöscht; die anderen bleiben, wo sie sind. „Andere Entlüftungslöcher platzieren“ im Menü bringt die des Programms zurück.</translation>
    </message>
    <message>
        <source>Deleted; the program places what is still needed.</source>
        <translation>Gelöscht; das Programm platziert, was noch nötig ist.</translation>
    </message>
    <message>
        <source>Density of A</source>
        <translation>Dichte von A</translation>
    </message>
    <message>
        <source>Density of B</source>
        <translation>Dichte von B</translation>
    </message>
    <message>
        <source>Depth at the &amp;left</source>
        <translation>Tiefe &amp;links</translation>
    </message>
    <message>
        <source>Depth at the right</source>
        <translation>Tiefe rechts</translation>
    </message>
    <message>
        <source>Depth in &amp;foam</source>
        <translation>Tiefe im S&amp;chaum</translation>
    </message>
    <message>
        <source>Depth in the middle</source>
        <translation>Tiefe in der Mitte</translation>
    </message>
    <message>
        <source>Depths from boards at hand</source>
        <translation>Tiefen aus vorhandenen Platten</translation>
    </message>
    <message>
        <source>Depths made sums of boards at hand: %1. Undo brings them back.</source>
        <translation>Tiefen zu Summen vorhandener Platten gemacht: %1. Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Disc: %1, up to %2 further out</source>
        <translation>Scheibe: %1, bis %2 weiter außen</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Fertig: %1.</translation>
    </message>
    <message>
        <source>Dose by mass or by volume</source>
        <translation>Dosis nach Masse oder Volumen</translation>
    </message>
    <message>
        <source>Drag a corner, pull a ring to an arc, double click a side for a new corner. Ctrl leaves the grid.</source>
        <translation>Ecke ziehen, Ring zum Bogen ziehen, Doppelklick auf eine Seite für eine neue Ecke. Strg verlässt das Raster.</translation>
    </message>
    <message>
        <source>Drag an object from the list, or press %1</source>
        <translation>Gegenstand aus der Liste ziehen oder %1 drücken</translation>
    </message>
    <message>
        <source>Drag corners; drag the ring on a side to make it an arc. A double click on a side makes a corner, Delete takes the chosen one away. Ctrl leaves the grid.</source>
        <translation>Ecken ziehen; den Ring auf einer Seite ziehen macht einen Bogen daraus. Ein Doppelklick auf eine Seite setzt eine Ecke, Entf nimmt die gewählte weg. Strg verlässt das Raster.</translation>
    </message>
    <message>
        <source>Drag from one corner or edge to another. Shift keeps it level, Ctrl lets go of edges, Esc ends.</source>
        <translation>Von einer Ecke oder Kante zur anderen ziehen. Umschalt hält gerade, Strg löst von Kanten, Esc beendet.</translation>
    </message>
    <message>
        <source>Drag objects from the list onto the drawer, or press Ctrl+Enter.</source>
        <translation>Gegenstände aus der Liste auf die Schublade ziehen oder Strg+Eingabe.</translation>
    </message>
    <message>
        <source>Drag the mark or use the arrow keys; double-click for automatic</source>
        <translation>Marke ziehen oder Pfeiltasten; Doppelklick für automatisch</translation>
    </message>
    <message>
        <source>Drag the notch along the edge, or use the arrow keys; Del takes it away.</source>
        <translation>Mulde am Rand entlang ziehen oder Pfeiltasten; Entf entfernt sie.</translation>
    </message>
    <message>
        <source>Drag the sheet about</source>
        <translation>Blatt verschieben</translation>
    </message>
    <message>
        <source>Drag to turn in steps of 15°; hold Ctrl to turn freely.</source>
        <translation>Ziehen dreht in Schritten von 15°; Strg halten für freies Drehen.</translation>
    </message>
    <message>
        <source>Draw it…</source>
        <translation>Zeichnen…</translation>
    </message>
    <message>
        <source>Draw the outline</source>
        <translation>Umriss zeichnen</translation>
    </message>
    <message>
        <source>Drawer</source>
        <translation>Schublade</translation>
    </message>
    <message>
        <source>Drawer %1</source>
        <translation>Schublade %1</translation>
    </message>
    <message>
        <source>Trial sheet</source>
        <translation>Probeblatt</translation>
    </message>
    <message>
        <source>Drawer plan</source>
        <translation>Schubladenplan</translation>
    </message>
    <message>
        <source>Drawer,</source>
        <translation>Schublade,</translation>
    </message>
    <message>
        <source>Drawer, from above</source>
        <translation>Schublade, von oben</translation>
    </message>
    <message>
        <source>Drawer:</source>
        <translation>Schublade:</translation>
    </message>
    <message>
        <source>Drawercast jobs (*.drawercast.json)</source>
        <translation>Drawercast-Aufträge (*.drawercast.json)</translation>
    </message>
    <message>
        <source>Drawercast jobs (*.drawercast.json);;All files (*)</source>
        <translation>Drawercast-Aufträge (*.drawercast.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Drawers</source>
        <translation>Schubladen</translation>
    </message>
    <message>
        <source>Drawer…</source>
        <translation>Schublade…</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
    </message>
    <message>
        <source>Drawings, true size</source>
        <translation>Zeichnungen, wahre Größe</translation>
    </message>
    <message>
        <source>Drill every ringed cross right through; screws go in from below. Block screws carry the block’s number; those outside the inner line hold the walls.</source>
        <translation>Jedes Kreuz im Ring durchbohren; Schrauben kommen von unten. Klotzschrauben tragen die Nummer des Klotzes; die außerhalb der inneren Linie halten die Wände.</translation>
    </message>
    <message>
        <source>Drill of a vent</source>
        <translation>Bohrer eines Entlüftungslochs</translation>
    </message>
    <message>
        <source>Drill bit of the vent</source>
        <translation>Bohrer des Entlüftungslochs</translation>
    </message>
    <message>
        <source>Drill the vents (double rings, V and a number) right through. No vent where a stiffener stands.</source>
        <translation>Die Entlüftungslöcher (Doppelringe, V und Nummer) durchbohren. Kein Loch, wo eine Versteifung steht.</translation>
    </message>
    <message>
        <source>Drills at &amp;hand, %1</source>
        <translation>&amp;Bohrer vorhanden, %1</translation>
    </message>
    <message>
        <source>Drop a photo or a scan here, or choose one above.

Lay the objects on the printed measuring sheet (menu Job), apart from each other and inside its field, and photograph it from above, all of its marks in the picture.</source>
        <translation>Ein Foto oder einen Scan hier ablegen oder oben eines wählen.

Die Gegenstände auf das gedruckte Messblatt legen (Menü Auftrag), getrennt und innerhalb des Felds, und von oben fotografieren, alle Marken im Bild.</translation>
    </message>
    <message>
        <source>Dupl&amp;icate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate object</source>
        <translation>Gegenstand verdoppeln</translation>
    </message>
    <message>
        <source>Each set</source>
        <translation>Je Satz</translation>
    </message>
    <message>
        <source>Each with a mixer</source>
        <translation>Jeder mit einem Mischer</translation>
    </message>
    <message>
        <source>Encloses no area. Give at least three corners that are not in line</source>
        <translation>Umschließt keine Fläche. Mindestens drei Ecken angeben, die nicht auf einer Geraden liegen</translation>
    </message>
    <message>
        <source>End for end</source>
        <translation>Nur um eine halbe Drehung</translation>
    </message>
    <message>
        <source>Ends of the long axis</source>
        <translation>Enden der langen Achse</translation>
    </message>
    <message>
        <source>Enlarged %1 times for shrinkage.</source>
        <translation>Für den Schwund %1-fach vergrößert.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Equal box &amp;walls serve all drawers, cast one after the other</source>
        <translation>Gleiche Kasten&amp;wände für alle Schubladen, nacheinander gegossen</translation>
    </message>
    <message>
        <source>Equal walls</source>
        <translation>Gleiche Stege</translation>
    </message>
    <message>
        <source>Equal walls, front to back</source>
        <translation>Gleiche Stege, von vorn nach hinten</translation>
    </message>
    <message>
        <source>Equal walls: moves %1; the narrowest goes from %2 to %3</source>
        <translation>Gleiche Stege: bewegt %1; der schmalste geht von %2 auf %3</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Even pitch along each wall, the first 30 mm from a corner or more, 45 mm at a wall’s butted end: common practice.</source>
        <translation>Gleicher Abstand entlang jeder Wand, die ersten 30 mm oder mehr von der Ecke, 45 mm an einem stumpfen Ende: üblich.</translation>
    </message>
    <message>
        <source>Every %1 mm</source>
        <translation>Alle %1 mm</translation>
    </message>
    <message>
        <source>Every 1/2 in</source>
        <translation>Alle 1/2 in</translation>
    </message>
    <message>
        <source>Every 1/4 in</source>
        <translation>Alle 1/4 in</translation>
    </message>
    <message>
        <source>Every 1/8 in</source>
        <translation>Alle 1/8 in</translation>
    </message>
    <message>
        <source>Every depth is a sum of boards at hand already.</source>
        <translation>Jede Tiefe ist schon eine Summe vorhandener Platten.</translation>
    </message>
    <message>
        <source>Every inch</source>
        <translation>Jeden Zoll</translation>
    </message>
    <message>
        <source>Every combination of kits is tried, so none is cheaper. Volumes and prices as entered.</source>
        <translation>Jede Zusammenstellung wird versucht, keine ist also billiger. Volumen und Preise wie eingegeben.</translation>
    </message>
    <message>
        <source>Everything is as it was.</source>
        <translation>Alles ist wie zuvor.</translation>
    </message>
    <message>
        <source>FRONT</source>
        <translation>VORN</translation>
    </message>
    <message>
        <source>FRONT of the drawer</source>
        <translation>Schublade VORN</translation>
    </message>
    <message>
        <source>Falls out when turned over: %1 hold it, it weighs %2.</source>
        <translation>Fällt beim Umdrehen heraus: %1 halten es, es wiegt %2.</translation>
    </message>
    <message>
        <source>Filled means at least ×%1 at the low end; too hard is over ×%2 at the high end.</source>
        <translation>Gefüllt heißt mindestens ×%1 am unteren Ende; zu hart ist über ×%2 am oberen Ende.</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Füllstück</translation>
    </message>
    <message>
        <source>Filling decides: ×%1 if low, needs ×%2.</source>
        <translation>Füllen entscheidet: ×%1 am unteren Ende, nötig ×%2.</translation>
    </message>
    <message>
        <source>Find an object</source>
        <translation>Gegenstand suchen</translation>
    </message>
    <message>
        <source>Find by name or standard</source>
        <translation>Nach Name oder Norm suchen</translation>
    </message>
    <message>
        <source>Find by name, size or zone</source>
        <translation>Nach Name, Größe oder Feld suchen</translation>
    </message>
    <message>
        <source>Find in the guide</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Find in the guide (Ctrl+F), next: Enter</source>
        <translation>Im Handbuch suchen (Strg+F), weiter: Eingabe</translation>
    </message>
    <message>
        <source>Finger &amp;notch</source>
        <translation>Griffmuld&amp;e</translation>
    </message>
    <message>
        <source>Finger notch</source>
        <translation>Griffmulde</translation>
    </message>
    <message>
        <source>Firmness</source>
        <translation>Festigkeit</translation>
    </message>
    <message>
        <source>People who mix and pour, then set the plate on and peg the vents: %1. People who close, from opposite sides: %2. Pre-start the closures before the clock.</source>
        <translation>Es mischen und gießen, dann Druckplatte auflegen und Löcher zustöpseln: %1. Es schließen, von gegenüberliegenden Seiten: %2. Verschlüsse vor dem Start der Uhr ansetzen.</translation>
    </message>
    <message>
        <source>First row is a &amp;header</source>
        <translation>Erste Zeile ist &amp;Kopfzeile</translation>
    </message>
    <message>
        <source>Fix each block by its number; the dashed line is the edge of the clay.</source>
        <translation>Jeden Klotz nach seiner Nummer befestigen; die gestrichelte Linie ist der Rand der Hohlkehle.</translation>
    </message>
    <message>
        <source>Flash; the vents&apos; plugs apart</source>
        <translation>Grat, ohne die Zapfen</translation>
    </message>
    <message>
        <source>Flatbed scan</source>
        <translation>Flachbettscan</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>Foam at hand is taken first. Of all combinations of whole kits that cover the rest: the cheapest, then the one that leaves least, then the fewest kits.</source>
        <translation>Vorhandener Schaum wird zuerst genommen. Von allen Zusammenstellungen ganzer Gebinde, die den Rest decken: die billigste, dann die mit dem kleinsten Rest, dann die mit den wenigsten Gebinden.</translation>
    </message>
    <message>
        <source>Foam for the mold as cut, and as built</source>
        <translation>Schaum für die Form wie gesägt und laut Aufmaß</translation>
    </message>
    <message>
        <source>Foam that leaves through the vents from full mold to half a minute after the rise, while none is pegged.</source>
        <translation>Schaum, der durch die Entlüftungslöcher geht, von voller Form bis eine halbe Minute nach dem Aufschäumen, solange keines zugestöpselt ist.</translation>
    </message>
    <message>
        <source>Foam thinner than this is listed under the checks: below 60 % of it as something to mend, else to look at. Empty fields go by the foam&apos;s firmness: common practice where round, our guess between.</source>
        <translation>Dünnerer Schaum steht in den Prüfungen: unter 60 % davon als zu beheben, sonst als zu bedenken. Leere Felder folgen der Festigkeit des Schaums: üblich, wo rund, sonst unsere Annahme.</translation>
    </message>
    <message>
        <source>Foam to buy, whole job</source>
        <translation>Schaum zu kaufen, ganzer Auftrag</translation>
    </message>
    <message>
        <source>Foam, drawer by drawer</source>
        <translation>Schaum, je Schublade</translation>
    </message>
    <message>
        <source>Foam, whole kits</source>
        <translation>Schaum, ganze Gebinde</translation>
    </message>
    <message>
        <source>Foams side &amp;by side…</source>
        <translation>Sch&amp;äume im Vergleich…</translation>
    </message>
    <message>
        <source>Foams side by side</source>
        <translation>Schäume im Vergleich</translation>
    </message>
    <message>
        <source>Foam…</source>
        <translation>Schaum…</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>Einklappen</translation>
    </message>
    <message>
        <source>Folder for the drawings</source>
        <translation>Ordner für die Zeichnungen</translation>
    </message>
    <message>
        <source>Folder for the lists</source>
        <translation>Ordner für die Listen</translation>
    </message>
    <message>
        <source>Foot pressure, the most</source>
        <translation>Fußdruck, höchster</translation>
    </message>
    <message>
        <source>For all drawers together. An opened kit may not keep.</source>
        <translation>Für alle Schubladen zusammen. Ein geöffnetes Gebinde hält vielleicht nicht.</translation>
    </message>
    <message>
        <source>Forth</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>Free outline</source>
        <translation>Freier Umriss</translation>
    </message>
    <message>
        <source>Free rise over mixed liquid; data sheet, or a cup</source>
        <translation>Frei aufgeschäumt zu flüssig; Datenblatt oder Becher</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later. It comes with no warranty.</source>
        <translation>Freie Software unter der GNU General Public License, Version 3 oder später. Ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>From above %1 × %2; from the side %3 deep, %4 proud</source>
        <translation>Von oben %1 × %2; von der Seite %3 tief, %4 Überstand</translation>
    </message>
    <message>
        <source>From an SVG file…</source>
        <translation>Aus SVG-Datei…</translation>
    </message>
    <message>
        <source>From here on the foam pushes. The slower of the two curves is not waited for.</source>
        <translation>Von hier an drückt der Schaum. Auf die langsamere der beiden Kurven wird nicht gewartet.</translation>
    </message>
    <message>
        <source>Our guess, until a cast has given it</source>
        <translation>Unsere Annahme, bis ein Guss sie ergibt</translation>
    </message>
    <message>
        <source>From the cup&apos;s floor, at the middle</source>
        <translation>Vom Becherboden, in der Mitte</translation>
    </message>
    <message>
        <source>From the drawer&apos;s bottom to what is over it</source>
        <translation>Vom Schubladenboden bis zu dem, was darüber ist</translation>
    </message>
    <message>
        <source>From the front, in an insert of %1</source>
        <translation>Von vorn, in einem Einsatz von %1</translation>
    </message>
    <message>
        <source>From the head of the chapter again</source>
        <translation>Wieder vom Anfang des Kapitels</translation>
    </message>
    <message>
        <source>From the insert&apos;s face</source>
        <translation>Ab Oberseite des Einsatzes</translation>
    </message>
    <message>
        <source>From the shelf: %1 × </source>
        <translation>Aus dem Vorrat: %1 × </translation>
    </message>
    <message>
        <source>From the start of mixing</source>
        <translation>Ab Mischbeginn</translation>
    </message>
    <message>
        <source>From the start of mixing, by a stopwatch. Hands are not slower on a cold day here.</source>
        <translation>Ab Mischbeginn, mit der Stoppuhr. Hände sind hier an einem kalten Tag nicht langsamer.</translation>
    </message>
    <message>
        <source>From the start of mixing. The foam in the channels reaches the plate after %1: it must be on by then.</source>
        <translation>Ab Mischbeginn. Der Schaum in den Kanälen erreicht die Druckplatte nach %1: Bis dahin muss sie aufliegen.</translation>
    </message>
    <message>
        <source>Front edge</source>
        <translation>Vordere Kante</translation>
    </message>
    <message>
        <source>Front left to back right</source>
        <translation>Vorn links nach hinten rechts</translation>
    </message>
    <message>
        <source>Front to back, this pocket counted</source>
        <translation>Von vorn nach hinten, diese Aussparung mitgezählt</translation>
    </message>
    <message>
        <source>Gas in the closed mold; our guess</source>
        <translation>Gas in der geschlossenen Form; unsere Annahme</translation>
    </message>
    <message>
        <source>Gas that leaves and what squeezes out are left out.</source>
        <translation>Entweichendes Gas und Austritt sind weggelassen.</translation>
    </message>
    <message>
        <source>Give it a name to be found by</source>
        <translation>Einen Namen geben, um sie wiederzufinden</translation>
    </message>
    <message>
        <source>Give it a name to be known by</source>
        <translation>Einen Namen geben, um ihn zu erkennen</translation>
    </message>
    <message>
        <source>Go on with this pour?</source>
        <translation>Diesen Guss fortsetzen?</translation>
    </message>
    <message>
        <source>Greatest &amp;pitch of closures</source>
        <translation>Größter A&amp;bstand der Verschlüsse</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>Grid %1</source>
        <translation>Raster %1</translation>
    </message>
    <message>
        <source>Guide – Drawercast</source>
        <translation>Handbuch – Drawercast</translation>
    </message>
    <message>
        <source>H&amp;eight</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>Half past eight is 8.5</source>
        <translation>Halb neun ist 8,5</translation>
    </message>
    <message>
        <source>Hardness decides: ×%1 if high, at most ×%2.</source>
        <translation>Härte entscheidet: ×%1 am oberen Ende, höchstens ×%2.</translation>
    </message>
    <message>
        <source>Have all placed for you: %1</source>
        <translation>Alle platzieren lassen: %1</translation>
    </message>
    <message>
        <source>Heavy to the front: moves %1; their center of mass goes from %2 to %3, the narrowest wall from %4 to %5</source>
        <translation>Schweres nach vorn: bewegt %1; dessen Schwerpunkt geht von %2 auf %3, der schmalste Steg von %4 auf %5</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Heights of the box walls</source>
        <translation>Höhen der Kastenwände</translation>
    </message>
    <message>
        <source>Held firmly: %1 hold it, it weighs %2.</source>
        <translation>Sitzt fest: %1 halten es, es wiegt %2.</translation>
    </message>
    <message>
        <source>High contrast, &amp;black on white</source>
        <translation>Hoher Kontrast, &amp;schwarz auf weiß</translation>
    </message>
    <message>
        <source>High contrast, &amp;white on black</source>
        <translation>Hoher Kontrast, &amp;weiß auf schwarz</translation>
    </message>
    <message>
        <source>Hold Ctrl to move freely; Esc puts it back.</source>
        <translation>Strg halten für freies Bewegen; Esc setzt zurück.</translation>
    </message>
    <message>
        <source>Hold a ruler to both scale bars before you cut.</source>
        <translation>Vor dem Sägen ein Lineal an beide Messbalken halten.</translation>
    </message>
    <message>
        <source>Hold a ruler to both scale bars of every page: 100 mm and 4 in, across and along.</source>
        <translation>An beide Messbalken jeder Seite ein Lineal halten: 100 mm und 4 in, quer und längs.</translation>
    </message>
    <message>
        <source>Holes in an edge strip after a few drives: shift them half a pitch then (our guess). Whether a head pulls through the board is not checked: there is no published figure for it.</source>
        <translation>Löcher in einer Kante reißen nach wenigen Malen aus: dann um den halben Abstand versetzen (unsere Annahme). Ob ein Kopf durch die Platte zieht, wird nicht geprüft: Dafür gibt es keine veröffentlichte Zahl.</translation>
    </message>
    <message>
        <source>Holes, from the datum 0, 0 in the front-left inner corner of the box</source>
        <translation>Löcher, vom Nullpunkt 0, 0 in der Innenecke des Kastens vorn links</translation>
    </message>
    <message>
        <source>Holes, from the datum 0, 0 over the front-left inner corner of the box</source>
        <translation>Löcher, vom Nullpunkt 0, 0 über der Innenecke des Kastens vorn links</translation>
    </message>
    <message>
        <source>Holes, from the datum over the box’s front-left inner corner</source>
        <translation>Löcher, vom Nullpunkt über der Innenecke des Kastens vorn links</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Hours and prices</source>
        <translation>Stunden und Preise</translation>
    </message>
    <message>
        <source>Hours are our guess for %1 at work: times taken with a stopwatch are better. What is printed bold can&apos;t wait without making the whole job later.</source>
        <translation>Stunden sind unsere Annahme für %1: Mit der Stoppuhr genommene sind besser. Fettes kann nicht warten, ohne den ganzen Auftrag zu verzögern.</translation>
    </message>
    <message>
        <source>How a figure comes about</source>
        <translation>Wie eine Zahl entsteht</translation>
    </message>
    <message>
        <source>How far the foam rises is for the test cup to say: a closed mold forces it.</source>
        <translation>Wie weit der Schaum aufschäumt, sagt der Probebecher: eine geschlossene Form erzwingt es.</translation>
    </message>
    <message>
        <source>How far the mold is taken apart</source>
        <translation>Wie weit die Form zerlegt ist</translation>
    </message>
    <message>
        <source>How far the plate lifts, what holds it and in which order; mirrored as the mold is</source>
        <translation>Wie weit die Druckplatte abhebt, was sie hält und in welcher Reihenfolge; gespiegelt wie die Form</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>How much of each part to mix, how hard it pushes and what to buy, once there is a drawer.</source>
        <translation>Wie viel von jeder Komponente zu mischen ist, wie stark es drückt und was zu kaufen ist, sobald es eine Schublade gibt.</translation>
    </message>
    <message>
        <source>How much of the measuring is done</source>
        <translation>Wie weit das Messen ist</translation>
    </message>
    <message>
        <source>How much of the search is done</source>
        <translation>Wie weit die Suche ist</translation>
    </message>
    <message>
        <source>How much quicker foam may be: our guess.</source>
        <translation>Wie viel schneller Schaum sein kann: unsere Annahme.</translation>
    </message>
    <message>
        <source>How often its liquid volume the foam has reached when the first and the last air pocket go. The mold is full at ×%1.</source>
        <translation>Auf das Wievielfache der Flüssigkeit der Schaum gestiegen ist, wenn der erste und der letzte Lufteinschluss gehen. Die Form ist voll bei ×%1.</translation>
    </message>
    <message>
        <source>How the foam arrives, where air stays, and the vents that let it out; mirrored as the mold is</source>
        <translation>Wie der Schaum ankommt, wo Luft bleibt, und die Entlüftungslöcher, die sie hinauslassen; gespiegelt wie die Form</translation>
    </message>
    <message>
        <source>How the molds are &amp;built…</source>
        <translation>Wie die Formen &amp;gebaut werden…</translation>
    </message>
    <message>
        <source>How the molds are built</source>
        <translation>Wie die Formen gebaut werden</translation>
    </message>
    <message>
        <source>How the molds are built…</source>
        <translation>Wie die Formen gebaut werden…</translation>
    </message>
    <message>
        <source>How the rows are read</source>
        <translation>Wie die Zeilen gelesen werden</translation>
    </message>
    <message>
        <source>How this figure comes about</source>
        <translation>Wie diese Zahl entsteht</translation>
    </message>
    <message>
        <source>ISO 2533</source>
        <translation>ISO 2533</translation>
    </message>
    <message>
        <source>Ideal gas law; air pressure by ISO 2533. How much hotter the foam in a mold gets: our guess.</source>
        <translation>Gesetz des idealen Gases; Luftdruck nach ISO 2533. Wie viel heißer der Schaum in einer Form wird: unsere Annahme.</translation>
    </message>
    <message>
        <source>Ideal gas law; both allowances, the factor and 10 K more, are our guess.</source>
        <translation>Gesetz des idealen Gases; beide Zuschläge, der Faktor und 10 K mehr, sind unsere Annahme.</translation>
    </message>
    <message>
        <source>If pegged once it stood still</source>
        <translation>Wenn zugestöpselt, als er stand</translation>
    </message>
    <message>
        <source>If the plan’s dose went into it: %1 when closed.</source>
        <translation>Mit der geplanten Dosis: %1, wenn geschlossen.</translation>
    </message>
    <message>
        <source>In the chapter “%1”</source>
        <translation>Im Kapitel „%1“</translation>
    </message>
    <message>
        <source>Inches, &amp;fractions</source>
        <translation>Zoll, &amp;Brüche</translation>
    </message>
    <message>
        <source>Inside</source>
        <translation>Innen</translation>
    </message>
    <message>
        <source>Inside, front to back</source>
        <translation>Innen, von vorn nach hinten</translation>
    </message>
    <message>
        <source>Inside, left to right</source>
        <translation>Innen, von links nach rechts</translation>
    </message>
    <message>
        <source>Into all buckets</source>
        <translation>In alle Eimer</translation>
    </message>
    <message>
        <source>It belongs to “%1”.</source>
        <translation>Sie gehört zu „%1“.</translation>
    </message>
    <message>
        <source>It is the mirror image of the drawer: the drawer’s RIGHT lies on the left. Do not turn it over.</source>
        <translation>Es ist das Spiegelbild der Schublade: Deren RECHTE Seite liegt links. Nicht umdrehen.</translation>
    </message>
    <message>
        <source>It must lie flat and reach every wall. Where it does not, measure the drawer again.</source>
        <translation>Es muss eben liegen und jede Wand erreichen. Wo nicht, die Schublade neu messen.</translation>
    </message>
    <message>
        <source>It needs no viscosity and no speed, and knows none.</source>
        <translation>Es braucht keine Viskosität und keine Geschwindigkeit und kennt keine.</translation>
    </message>
    <message>
        <source>It stands on every template:</source>
        <translation>Er steht auf jeder Schablone:</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translation>Sie wurde nie gespeichert.</translation>
    </message>
    <message>
        <source>It was not printed</source>
        <translation>Es wurde nicht gedruckt</translation>
    </message>
    <message>
        <source>It was not written</source>
        <translation>Es wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Its closures&apos; &amp;holes were new or shifted</source>
        <translation>Löcher der Verschlüsse neu &amp;oder versetzt</translation>
    </message>
    <message>
        <source>Its neighbor is so near that both may be one thing, cut by a blank streak: then brush over the gap.</source>
        <translation>Der Nachbar ist so nah, dass beide ein Stück sein können, getrennt durch einen blanken Streifen: dann über die Lücke pinseln.</translation>
    </message>
    <message>
        <source>Job summary</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Keep as built</source>
        <translation>Aufmaß übernehmen</translation>
    </message>
    <message>
        <source>Keep changes</source>
        <translation>Änderungen übernehmen</translation>
    </message>
    <message>
        <source>Keep the casts</source>
        <translation>Güsse übernehmen</translation>
    </message>
    <message>
        <source>Keep the cups</source>
        <translation>Becher übernehmen</translation>
    </message>
    <message>
        <source>Keep the vents as they are</source>
        <translation>Entlüftungslöcher so lassen</translation>
    </message>
    <message>
        <source>Kept as it is here; saving replaces the version on disk.</source>
        <translation>Bleibt wie hier; Speichern ersetzt die gespeicherte Fassung.</translation>
    </message>
    <message>
        <source>Kits</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Kits to buy</source>
        <translation>Gebinde zu kaufen</translation>
    </message>
    <message>
        <source>L&amp;eft in a bucket: %1 ± %2 (%3)</source>
        <translation>&amp;Rest im Eimer: %1 ± %2 (%3)</translation>
    </message>
    <message>
        <source>L&amp;oad it may carry</source>
        <translation>&amp;Tragkraft</translation>
    </message>
    <message>
        <source>L/s</source>
        <translation>L/s</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>LINKS</translation>
    </message>
    <message>
        <source>LEFT of the drawer</source>
        <translation>Schublade LINKS</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Labels read one way: turns %1, can’t turn %2; the narrowest wall goes from %3 to %4</source>
        <translation>Etiketten in einer Richtung: dreht %1, nicht drehbar %2; der schmalste Steg geht von %3 auf %4</translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Large masses of foam heat up inside, for hours. Let them cool in the open, away from anything that burns.</source>
        <translation>Große Schaummassen werden innen heiß, stundenlang. Im Freien abkühlen lassen, weg von allem, was brennt.</translation>
    </message>
    <message>
        <source>Larger than any sheet or length of its kind: </source>
        <translation>Größer als jede Platte, jedes Kantholz oder Rohr dieser Art: </translation>
    </message>
    <message>
        <source>Larger than this paper</source>
        <translation>Größer als dieses Papier</translation>
    </message>
    <message>
        <source>Largest rectangle inside: %1 × %2 %3
Width: %4. Depth: %5.</source>
        <translation>Größtes Rechteck innen: %1 × %2 %3
Breite: %4. Tiefe: %5.</translation>
    </message>
    <message>
        <source>Last used</source>
        <translation>Zuletzt benutzt</translation>
    </message>
    <message>
        <source>Lay it on the drawer’s bottom, printed side up, arrow F to the drawer’s front. The outer line is the drawer, the dashed one the insert.</source>
        <translation>Auf den Schubladenboden legen, bedruckte Seite oben, Pfeil F nach vorn. Die äußere Linie ist die Schublade, die gestrichelte der Einsatz.</translation>
    </message>
    <message>
        <source>Lay it on the top face of the pattern board, printed side up: datum 0, 0 in the front-left inner corner of the box, arrow F to the drawer’s front.</source>
        <translation>Auf die Oberseite der Musterplatte legen, bedruckte Seite oben: Nullpunkt 0, 0 in die Innenecke des Kastens vorn links, Pfeil F zur Vorderseite der Schublade.</translation>
    </message>
    <message>
        <source>Lay it on the top face of the plate, printed side up, its outer line on the plate’s edges, arrow F to the drawer’s front. It is mirrored, as the board below is.</source>
        <translation>Auf die Oberseite der Druckplatte legen, bedruckte Seite oben, äußere Linie auf die Plattenkanten, Pfeil F zur Vorderseite der Schublade. Gespiegelt wie die Musterplatte darunter.</translation>
    </message>
    <message>
        <source>Lay objects inside the frame, apart from each other.</source>
        <translation>Gegenstände in den Rahmen legen, getrennt voneinander.</translation>
    </message>
    <message>
        <source>Lay the stiffeners on their outlines; at their ends the closure goes through both: drill them together, each on the piece’s center line.</source>
        <translation>Versteifungen auf ihre Umrisse legen; an den Enden geht der Verschluss durch beide: zusammen bohren, jeweils auf der Mittellinie des Kantholzes.</translation>
    </message>
    <message>
        <source>Leave as &amp;is</source>
        <translation>Hi&amp;nnehmen</translation>
    </message>
    <message>
        <source>Leave as is</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <source>Left as is: %1</source>
        <translation>Hingenommen: %1</translation>
    </message>
    <message>
        <source>Left edge</source>
        <translation>Linke Kante</translation>
    </message>
    <message>
        <source>Left in the b&amp;ucket</source>
        <translation>Rest im E&amp;imer</translation>
    </message>
    <message>
        <source>Left over: </source>
        <translation>Bleibt übrig: </translation>
    </message>
    <message>
        <source>Left to right, this pocket counted</source>
        <translation>Von links nach rechts, diese Aussparung mitgezählt</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Kanthölzer und Rohre</translation>
    </message>
    <message>
        <source>Lens to sheet</source>
        <translation>Linse bis Blatt</translation>
    </message>
    <message>
        <source>Lens to sheet: %1 as typed</source>
        <translation>Linse bis Blatt: %1 wie eingegeben</translation>
    </message>
    <message>
        <source>Lens to sheet: %1 by the perspective</source>
        <translation>Linse bis Blatt: %1 aus der Perspektive</translation>
    </message>
    <message>
        <source>Lens to sheet: %1 by what the file says of the lens</source>
        <translation>Linse bis Blatt: %1 nach den Angaben der Datei</translation>
    </message>
    <message>
        <source>Lens to sheet: this photo can’t tell, type it</source>
        <translation>Linse bis Blatt: dem Foto nicht zu entnehmen, bitte eingeben</translation>
    </message>
    <message>
        <source>Less than 0 squeezes</source>
        <translation>Unter 0: Pressung</translation>
    </message>
    <message>
        <source>Less than 0: above it</source>
        <translation>Unter 0: darüber</translation>
    </message>
    <message>
        <source>Let the overpack be worked out</source>
        <translation>Überfüllung berechnen lassen</translation>
    </message>
    <message>
        <source>Letter, 8.5 × 11 in</source>
        <translation>Letter, 8,5 × 11 in</translation>
    </message>
    <message>
        <source>Level %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>Limits and use</source>
        <translation>Grenzen und Gebrauch</translation>
    </message>
    <message>
        <source>Line %1 is not read: %2</source>
        <translation>Zeile %1 ist nicht gelesen: %2</translation>
    </message>
    <message>
        <source>Line %1 is read: %2</source>
        <translation>Zeile %1 ist gelesen: %2</translation>
    </message>
    <message>
        <source>Linear; data sheet, better from a cast of your own</source>
        <translation>Linear; Datenblatt, besser ein eigener Guss</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>Lock vent</source>
        <translation>Entlüftungsloch festhalten</translation>
    </message>
    <message>
        <source>Locked by you: the others keep clear of it. Drag it, or let it go with Shift+L.</source>
        <translation>Von Hand festgehalten: Die anderen halten Abstand. Ziehen oder mit Umschalt+L freigeben.</translation>
    </message>
    <message>
        <source>Locked: they were copied, and stay.</source>
        <translation>Festgehalten: Sie wurden kopiert und bleiben.</translation>
    </message>
    <message>
        <source>Locked: unlock it to move it.</source>
        <translation>Festgehalten: zum Bewegen freigeben.</translation>
    </message>
    <message>
        <source>Longer than any workshop. Check the unit</source>
        <translation>Länger als jede Werkstatt. Einheit prüfen</translation>
    </message>
    <message>
        <source>Looking for outlines…</source>
        <translation>Umrisse werden gesucht…</translation>
    </message>
    <message>
        <source>Looking for places…</source>
        <translation>Plätze werden gesucht…</translation>
    </message>
    <message>
        <source>Looking for the sheet…</source>
        <translation>Das Blatt wird gesucht…</translation>
    </message>
    <message>
        <source>Lying round</source>
        <translation>Rund, liegend</translation>
    </message>
    <message>
        <source>MIRRORED</source>
        <translation>GESPIEGELT</translation>
    </message>
    <message>
        <source>Make the copies</source>
        <translation>Kopien machen</translation>
    </message>
    <message>
        <source>Make the insert %1 thicker</source>
        <translation>Einsatz %1 dicker machen</translation>
    </message>
    <message>
        <source>Make the job</source>
        <translation>Auftrag anlegen</translation>
    </message>
    <message>
        <source>Make the pockets of “%1” %2 deeper</source>
        <translation>Aussparungen von „%1“ %2 tiefer machen</translation>
    </message>
    <message>
        <source>Make the pockets of “%1” %2 shallower</source>
        <translation>Aussparungen von „%1“ %2 flacher machen</translation>
    </message>
    <message>
        <source>Mar&amp;kup</source>
        <translation>Au&amp;fschlag</translation>
    </message>
    <message>
        <source>Markup, %1 %</source>
        <translation>Aufschlag, %1 %</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Abhaken</translation>
    </message>
    <message>
        <source>Marked, but not saved: %1</source>
        <translation>Abgehakt, aber nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Mass (g)</source>
        <translation>Masse (g)</translation>
    </message>
    <message>
        <source>Mass (lb)</source>
        <translation>Masse (lb)</translation>
    </message>
    <message>
        <source>Mass is kept; densities by the foam’s label, as entered.</source>
        <translation>Masse bleibt erhalten; Dichten nach dem Etikett des Schaums, wie eingegeben.</translation>
    </message>
    <message>
        <source>Mean ± standard deviation (casts). Check what the job is to reckon with from now on; undo takes it back.</source>
        <translation>Mittel ± Standardabweichung (Güsse). Ankreuzen, womit der Auftrag künftig rechnen soll; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Measure each object&apos;s height, and from lens to sheet.</source>
        <translation>Höhe jedes Gegenstands messen, und von der Linse zum Blatt.</translation>
    </message>
    <message>
        <source>Measure from a p&amp;hoto (not in this build)…</source>
        <translation>Aus einem F&amp;oto messen (nicht in dieser Fassung)…</translation>
    </message>
    <message>
        <source>Measure from a p&amp;hoto…</source>
        <translation>Aus einem &amp;Foto messen…</translation>
    </message>
    <message>
        <source>Measure from a photo</source>
        <translation>Aus einem Foto messen</translation>
    </message>
    <message>
        <source>Measure the drawer inside. Where it is not square, or things stand in it, change the drawer later: it can be measured with a tape.</source>
        <translation>Die Schublade innen messen. Ist sie nicht rechtwinklig oder steht etwas darin, die Schublade später ändern: Sie lässt sich mit dem Maßband aufmessen.</translation>
    </message>
    <message>
        <source>Measure the mold before the pour: what its box, walls and odd blocks change is worked out again. Pour what stands under “pour”.</source>
        <translation>Die Form vor dem Guss messen: Was Kasten, Wände und abweichende Klötze ändern, wird neu berechnet. Gießen, was unter „gießen“ steht.</translation>
    </message>
    <message>
        <source>Measured with a &amp;tape</source>
        <translation>Mit dem Maß&amp;band gemessen</translation>
    </message>
    <message>
        <source>Measuring sheet for photos</source>
        <translation>Messblatt für Fotos</translation>
    </message>
    <message>
        <source>Measuring sheet for photos…</source>
        <translation>Messblatt für Fotos…</translation>
    </message>
    <message>
        <source>Measuring sheet, A4</source>
        <translation>Messblatt, A4</translation>
    </message>
    <message>
        <source>Measuring sheet, Letter</source>
        <translation>Messblatt, Letter</translation>
    </message>
    <message>
        <source>Measuring was stopped</source>
        <translation>Das Messen wurde angehalten</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Mirror front to back</source>
        <translation>Vorn und hinten spiegeln</translation>
    </message>
    <message>
        <source>Mirror left to right</source>
        <translation>Links und rechts spiegeln</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Gemischt</translation>
    </message>
    <message>
        <source>Mixing and pouring</source>
        <translation>Mischen und gießen</translation>
    </message>
    <message>
        <source>Mold,</source>
        <translation>Form,</translation>
    </message>
    <message>
        <source>Mold, MIRRORED</source>
        <translation>Form, GESPIEGELT</translation>
    </message>
    <message>
        <source>Mold, put together</source>
        <translation>Form, zusammengebaut</translation>
    </message>
    <message>
        <source>More came out than was mixed: weigh again.</source>
        <translation>Mehr kam heraus als gemischt: neu wiegen.</translation>
    </message>
    <message>
        <source>More in the guide</source>
        <translation>Mehr im Handbuch</translation>
    </message>
    <message>
        <source>More overpack makes the insert firmer and heavier, and pushes harder.</source>
        <translation>Mehr Überfüllung macht den Einsatz fester und schwerer und drückt stärker.</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Bewegen</translation>
    </message>
    <message>
        <source>Move by 1 mm, with Shift by 0.1 mm</source>
        <translation>Um 1 mm bewegen, mit Umschalt um 0,1 mm</translation>
    </message>
    <message>
        <source>Move to a typed place</source>
        <translation>An eingegebene Stelle</translation>
    </message>
    <message>
        <source>Move vent</source>
        <translation>Entlüftungsloch bewegen</translation>
    </message>
    <message>
        <source>Move “%1” %2</source>
        <translation>„%1“ bewegen: %2</translation>
    </message>
    <message>
        <source>Name of the picture</source>
        <translation>Name des Bilds</translation>
    </message>
    <message>
        <source>Nearest easy shapes</source>
        <translation>Nächste einfache Formen</translation>
    </message>
    <message>
        <source>Needed with spare: </source>
        <translation>Nötig mit Reserve: </translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>Never close a container of half-reacted or wet parts: gas builds up in it.</source>
        <translation>Nie ein Gefäß mit halb reagierten oder feuchten Komponenten schließen: Darin entsteht Gas.</translation>
    </message>
    <message>
        <source>New drawer</source>
        <translation>Neue Schublade</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>New object</source>
        <translation>Neuer Gegenstand</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>Neue Revision</translation>
    </message>
    <message>
        <source>Next best: %1, %2 stiffeners, %3 closures.</source>
        <translation>Nächstbeste: %1, %2 Versteifungen, %3 Verschlüsse.</translation>
    </message>
    <message>
        <source>Next best: %1, bare, %3 closures.</source>
        <translation>Nächstbeste: %1, ohne Versteifung, %3 Verschlüsse.</translation>
    </message>
    <message>
        <source>Next best: %1, one stiffener, %3 closures.</source>
        <translation>Nächstbeste: %1, eine Versteifung, %3 Verschlüsse.</translation>
    </message>
    <message>
        <source>Next pocket</source>
        <translation>Nächste Aussparung</translation>
    </message>
    <message>
        <source>No checks: nothing to mend</source>
        <translation>Keine Prüfungen: nichts zu beheben</translation>
    </message>
    <message>
        <source>No cup is in use: every figure of the foam is by the label.</source>
        <translation>Kein Becher in Gebrauch: Alle Zahlen des Schaums nach Etikett.</translation>
    </message>
    <message>
        <source>No dose yet: a check says what is missing.</source>
        <translation>Noch keine Dosis: Eine Prüfung sagt, was fehlt.</translation>
    </message>
    <message>
        <source>No drawer yet. Measure its inside: width, depth and clear height.</source>
        <translation>Noch keine Schublade. Innen messen: Breite, Tiefe und lichte Höhe.</translation>
    </message>
    <message>
        <source>No grid</source>
        <translation>Kein Raster</translation>
    </message>
    <message>
        <source>No number of batches is poured in time, so they are split by volume alone.</source>
        <translation>Keine Zahl von Ansätzen ist rechtzeitig gegossen; geteilt wird also nur nach Volumen.</translation>
    </message>
    <message>
        <source>No objects yet. Each thing that gets a pocket is an object here: its outline, how deep it sits, its mass.</source>
        <translation>Noch keine Gegenstände. Alles, was eine Aussparung bekommt, ist hier ein Gegenstand: sein Umriss, wie tief er sitzt, seine Masse.</translation>
    </message>
    <message>
        <source>No object’s name holds “%1”.</source>
        <translation>Kein Gegenstand heißt „%1“.</translation>
    </message>
    <message>
        <source>No outline is chosen</source>
        <translation>Kein Umriss ist gewählt</translation>
    </message>
    <message>
        <source>No overpack is both full at the low end and not too hard at the high end. A test cup narrows the band.</source>
        <translation>Keine Überfüllung füllt am unteren Ende und ist am oberen nicht zu hart. Ein Probebecher verengt die Spanne.</translation>
    </message>
    <message>
        <source>No pages: no drawer of this job can be drawn yet. The checks say why.</source>
        <translation>Keine Seiten: Noch lässt sich keine Schublade dieses Auftrags zeichnen. Die Prüfungen sagen, warum.</translation>
    </message>
    <message>
        <source>No printer is off by more than %1 mm in 100: some window fitted these pages. Print them at 100 % and measure again.</source>
        <translation>Kein Drucker weicht um mehr als %1 mm auf 100 ab: Ein Fenster hat diese Seiten angepasst. Mit 100 % drucken und neu messen.</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>Auf diesem Rechner ist kein Drucker eingerichtet; ein PDF lässt sich anderswo drucken.</translation>
    </message>
    <message>
        <source>No small change puts this right: move more than one pocket, or change the drawer.</source>
        <translation>Keine kleine Änderung behebt das: mehr als eine Aussparung bewegen oder die Schublade ändern.</translation>
    </message>
    <message>
        <source>No snapping while moving</source>
        <translation>Beim Bewegen nicht einrasten</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Nobody waits for another; a pause shortens the pour.</source>
        <translation>Niemand wartet auf einen anderen; eine Pause verkürzt das Gießen.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Not a bound: real foam may be hotter yet. A test cup lowers it. Screws and boards are judged by it, bow and gap by the pressure when closed.</source>
        <translation>Keine Schranke: Wirklicher Schaum kann noch heißer werden. Ein Probebecher senkt ihn. Schrauben und Platten werden an ihm gemessen, Durchbiegung und Spalt am Druck in der geschlossenen Form.</translation>
    </message>
    <message>
        <source>Not a length. Type it like 82.5, 8.25 cm or 3 1/4 in</source>
        <translation>Keine Länge. So eingeben: 82,5 oder 8,25 cm oder 3 1/4 in</translation>
    </message>
    <message>
        <source>Not a number. Type it like 82.5 or 3 1/4</source>
        <translation>Keine Zahl. So eingeben: 82,5 oder 3 1/4</translation>
    </message>
    <message>
        <source>Not worked out</source>
        <translation>Nicht berechnet</translation>
    </message>
    <message>
        <source>Foam, mold as built</source>
        <translation>Schaum, Form wie gebaut</translation>
    </message>
    <message>
        <source>Not yet: </source>
        <translation>Noch nicht: </translation>
    </message>
    <message>
        <source>Not yet: a drawer has no foam figures.</source>
        <translation>Noch nicht: Eine Schublade hat keine Schaumzahlen.</translation>
    </message>
    <message>
        <source>Notch</source>
        <translation>Mulde</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Nothing in this drawer yet</source>
        <translation>In dieser Schublade ist noch nichts</translation>
    </message>
    <message>
        <source>Nothing is chosen that could be copied.</source>
        <translation>Nichts gewählt, was sich kopieren ließe.</translation>
    </message>
    <message>
        <source>Nothing measured yet that could be reckoned with.</source>
        <translation>Noch nichts gemessen, womit sich rechnen ließe.</translation>
    </message>
    <message>
        <source>Nothing pasted yet.</source>
        <translation>Noch nichts eingefügt.</translation>
    </message>
    <message>
        <source>Nothing stands in the drawer. Add a slide, a lock or a rail that the insert must keep clear of.</source>
        <translation>In der Schublade steht nichts. Schiene, Schloss oder Leiste hinzufügen, von denen der Einsatz frei bleiben muss.</translation>
    </message>
    <message>
        <source>Nothing to buy</source>
        <translation>Nichts zu kaufen</translation>
    </message>
    <message>
        <source>Nothing to change: it is so already, or it does not fit.</source>
        <translation>Nichts zu ändern: Es ist schon so, oder es passt nicht.</translation>
    </message>
    <message>
        <source>Nothing to mend</source>
        <translation>Nichts zu beheben</translation>
    </message>
    <message>
        <source>Nothing to tidy: walls are even, labels read one way, and what is heavy stands as near the front as it can, or nothing has room to move.</source>
        <translation>Nichts aufzuräumen: Stege sind gleich, Etiketten in einer Richtung lesbar, Schweres so weit vorn wie möglich, oder nichts hat Platz zum Bewegen.</translation>
    </message>
    <message>
        <source>Nothing weighed or measured yet.</source>
        <translation>Noch nichts gewogen oder gemessen.</translation>
    </message>
    <message>
        <source>Nudge</source>
        <translation>Schieben</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>Object sheet</source>
        <translation>Blatt der Gegenstände</translation>
    </message>
    <message>
        <source>Object sheets, true size</source>
        <translation>Blätter der Gegenstände, wahre Größe</translation>
    </message>
    <message>
        <source>Object:</source>
        <translation>Gegenstand:</translation>
    </message>
    <message>
        <source>Objects</source>
        <translation>Gegenstände</translation>
    </message>
    <message>
        <source>Objects added: %1.</source>
        <translation>Gegenstände hinzugefügt: %1.</translation>
    </message>
    <message>
        <source>Objects added: %1. Drag them onto the drawer, or press Ctrl+Enter. Ctrl+R places all.</source>
        <translation>Gegenstände hinzugefügt: %1. Auf die Schublade ziehen oder Strg+Eingabe. Strg+R platziert alle.</translation>
    </message>
    <message>
        <source>Objects at true size</source>
        <translation>Gegenstände in wahrer Größe</translation>
    </message>
    <message>
        <source>Objects from a photo</source>
        <translation>Gegenstände aus einem Foto</translation>
    </message>
    <message>
        <source>Objects measured: %1. Drag them onto the drawer, or press Ctrl+Enter.</source>
        <translation>Gegenstände gemessen: %1. Auf die Schublade ziehen oder Strg+Eingabe.</translation>
    </message>
    <message>
        <source>Objects of published &amp;size…</source>
        <translation>Gegenstände in Norm&amp;größen…</translation>
    </message>
    <message>
        <source>Objects of published size</source>
        <translation>Gegenstände in Normgrößen</translation>
    </message>
    <message>
        <source>Obstruction %1</source>
        <translation>Hindernis %1</translation>
    </message>
    <message>
        <source>Odd blocks</source>
        <translation>Abweichende Klötze</translation>
    </message>
    <message>
        <source>Of all that is chosen, notches too; from the drawer’s front</source>
        <translation>Von allem Gewählten, mit Mulden; ab der Vorderseite der Schublade</translation>
    </message>
    <message>
        <source>Of all that is chosen, notches too; from the drawer’s left</source>
        <translation>Von allem Gewählten, mit Mulden; ab der linken Seite der Schublade</translation>
    </message>
    <message>
        <source>Of part B; the pigment&apos;s label</source>
        <translation>Von B; Etikett des Pigments</translation>
    </message>
    <message>
        <source>Of room and parts</source>
        <translation>Von Raum und Komponenten</translation>
    </message>
    <message>
        <source>Of the largest one</source>
        <translation>Des größten</translation>
    </message>
    <message>
        <source>Of the whole object</source>
        <translation>Des ganzen Gegenstands</translation>
    </message>
    <message numerus="yes">
        <source>Of them %n set by you.</source>
        <translation>
            <numerusform>Davon %n von Hand gesetzt.</numerusform>
            <numerusform>Davon %n von Hand gesetzt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Of work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Of work, in the job&apos;s currency</source>
        <translation>Arbeit, in der Währung des Auftrags</translation>
    </message>
    <message>
        <source>Off center, x</source>
        <translation>Außer Mitte, x</translation>
    </message>
    <message>
        <source>Off center, y</source>
        <translation>Außer Mitte, y</translation>
    </message>
    <message>
        <source>On all of it</source>
        <translation>Auf alles</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
    </message>
    <message>
        <source>On top of the cost</source>
        <translation>Auf die Kosten</translation>
    </message>
    <message>
        <source>Once cured</source>
        <translation>Ausgehärtet</translation>
    </message>
    <message>
        <source>Once the insert is trimmed, weigh and measure it: Pour day, As cast.</source>
        <translation>Ist der Einsatz beschnitten, wiegen und messen: Gießtag, Gussergebnis.</translation>
    </message>
    <message>
        <source>One batch.</source>
        <translation>Ein Ansatz.</translation>
    </message>
    <message>
        <source>One closure</source>
        <translation>Ein Verschluss</translation>
    </message>
    <message>
        <source>One pattern block</source>
        <translation>Ein Musterklotz</translation>
    </message>
    <message>
        <source>One person: pre-start the closures before the clock, and have the plate within reach.</source>
        <translation>Eine Person: Verschlüsse vor dem Start der Uhr ansetzen, Druckplatte in Reichweite.</translation>
    </message>
    <message>
        <source>One stiffener</source>
        <translation>Eine Versteifung</translation>
    </message>
    <message>
        <source>One unit of a drawing is one millimeter: open it at 100 %.</source>
        <translation>Eine Einheit der Zeichnung ist ein Millimeter: mit 100 % öffnen.</translation>
    </message>
    <message>
        <source>Only the widest edge is seen</source>
        <translation>Nur die breiteste Kante ist zu sehen</translation>
    </message>
    <message>
        <source>Onto the &amp;grid</source>
        <translation>Ins &amp;Raster</translation>
    </message>
    <message>
        <source>Onto the grid</source>
        <translation>Ins Raster</translation>
    </message>
    <message>
        <source>Ope&amp;ns at</source>
        <translation>Öffnet &amp;um</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Open already</source>
        <translation>Schon offen</translation>
    </message>
    <message>
        <source>Open the demo &amp;job: standard objects</source>
        <translation>Beispielauftra&amp;g öffnen: Normteile</translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Out of range: %1</source>
        <translation>Außerhalb des Bereichs: %1</translation>
    </message>
    <message>
        <source>Outline from an SVG file</source>
        <translation>Umriss aus SVG-Datei</translation>
    </message>
    <message>
        <source>Outlines found</source>
        <translation>Gefundene Umrisse</translation>
    </message>
    <message>
        <source>Outlines of the drawing</source>
        <translation>Umrisse der Zeichnung</translation>
    </message>
    <message>
        <source>Outlines: %1</source>
        <translation>Umrisse: %1</translation>
    </message>
    <message>
        <source>Outward; 0 is straight</source>
        <translation>Nach außen; 0 ist gerade</translation>
    </message>
    <message>
        <source>Over free rise; auto: 15 % with a cup, 20 % without, more if need be (common practice)</source>
        <translation>Über frei aufgeschäumt; auto: 15 % mit Becher, 20 % ohne, mehr falls nötig (üblich)</translation>
    </message>
    <message>
        <source>Over the board, sealed</source>
        <translation>Über der Platte, versiegelt</translation>
    </message>
    <message>
        <source>Overpack</source>
        <translation>Überfüllung</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>P&amp;iece</source>
        <translation>&amp;Kantholz</translation>
    </message>
    <message>
        <source>P&amp;ressure plate</source>
        <translation>&amp;Druckplatte</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Pages are corrected for what its scales measured, and say so. To measure again, print a page with 100 and 100.</source>
        <translation>Seiten werden nach den gemessenen Maßstäben korrigiert und sagen es. Zum neuen Messen eine Seite mit 100 und 100 drucken.</translation>
    </message>
    <message>
        <source>Paint over what belongs to an object and was not seen as such</source>
        <translation>Übermalen, was zum Gegenstand gehört und nicht erkannt wurde</translation>
    </message>
    <message>
        <source>Paint over what is no object: shadows, marks, dirt</source>
        <translation>Übermalen, was kein Gegenstand ist: Schatten, Flecken, Schmutz</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>One of the two parts contains isocyanate: here it is called part A. Some labels call it B: go by the safety data sheet and enter that one as A. It can sensitize: after that a trace is enough to bring on asthma; whoever has asthma or has reacted to it before stays away. Ventilation, gloves, eye and breathing protection as the safety data sheet and local rules say. Drawercast gives no exposure advice of its own.</source>
        <translation>Eine der beiden Komponenten enthält Isocyanat; hier heißt sie A. Auf manchen Etiketten ist es B: nach dem Sicherheitsdatenblatt gehen und sie als A eintragen. Es kann sensibilisieren: Danach löst schon eine Spur Asthma aus; wer Asthma hat oder schon darauf reagiert hat, bleibt fern. Lüftung, Handschuhe, Augen- und Atemschutz nach Sicherheitsdatenblatt und örtlichen Vorschriften. Drawercast gibt keinen eigenen Rat zur Belastung.</translation>
    </message>
    <message>
        <source>Part of it may be a shadow: hold it against the object, and brush the shadow away.</source>
        <translation>Ein Teil davon kann Schatten sein: an den Gegenstand halten und den Schatten wegpinseln.</translation>
    </message>
    <message>
        <source>Parts &amp;A</source>
        <translation>Teile &amp;A</translation>
    </message>
    <message>
        <source>Parts &amp;B</source>
        <translation>Teile &amp;B</translation>
    </message>
    <message>
        <source>Parts of the foam’s figures</source>
        <translation>Teile der Schaumdaten</translation>
    </message>
    <message>
        <source>Set on later than %1, it can no longer be closed in time: past that leave it off and let it rise open.</source>
        <translation>Später als nach %1 aufgelegt, lässt sie sich nicht mehr rechtzeitig schließen: danach weglassen und offen steigen lassen.</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Paste a &amp;list…</source>
        <translation>Liste &amp;einfügen…</translation>
    </message>
    <message>
        <source>Paste a list</source>
        <translation>Liste einfügen</translation>
    </message>
    <message>
        <source>Paste a list from a spreadsheet: %1</source>
        <translation>Liste aus einer Tabelle einfügen: %1</translation>
    </message>
    <message>
        <source>Paste a list of objects</source>
        <translation>Gegenstandsliste einfügen</translation>
    </message>
    <message>
        <source>Pasted list</source>
        <translation>Eingefügte Liste</translation>
    </message>
    <message>
        <source>Pattern board</source>
        <translation>Musterplatte</translation>
    </message>
    <message>
        <source>Pa·s</source>
        <translation>Pa·s</translation>
    </message>
    <message>
        <source>They tighten the closures</source>
        <translation>Sie ziehen die Verschlüsse an</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Photo or scan</source>
        <translation>Foto oder Scan</translation>
    </message>
    <message>
        <source>Photo with the outlines</source>
        <translation>Foto mit den Umrissen</translation>
    </message>
    <message>
        <source>Photos and scans (*.jpg *.jpeg *.png)</source>
        <translation>Fotos und Scans (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>Photos can’t be measured</source>
        <translation>Fotos können nicht gemessen werden</translation>
    </message>
    <message>
        <source>Picture of the drawer from above</source>
        <translation>Bild der Schublade von oben</translation>
    </message>
    <message>
        <source>Picture of the object</source>
        <translation>Bild des Gegenstands</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platzieren</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Place the other vents</source>
        <translation>Andere Entlüftungslöcher platzieren</translation>
    </message>
    <message>
        <source>Placed by the program. Drag it, or lock it with L, and the others follow.</source>
        <translation>Vom Programm platziert. Ziehen oder mit L festhalten, die anderen folgen.</translation>
    </message>
    <message>
        <source>Placed: %1. Moved: %2. Found no room: %3.</source>
        <translation>Platziert: %1. Bewegt: %2. Kein Platz: %3.</translation>
    </message>
    <message>
        <source>Places always missed with sealer and release</source>
        <translation>Stellen, die bei Versiegelung und Trennmittel immer vergessen werden</translation>
    </message>
    <message>
        <source>Places that the foam closes in from all sides before it fills them. One counts as vented when no more than a few milliliters stay in it.</source>
        <translation>Stellen, die der Schaum von allen Seiten umschließt, bevor er sie füllt. Als entlüftet zählt eine, wenn höchstens ein paar Milliliter bleiben.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan cast foam inserts for drawers: measure the drawer and the objects, arrange them, mend what the checks say, and print templates at true size.</source>
        <translation>Gegossene Schaumeinsätze planen: Schublade und Gegenstände messen, anordnen, beheben, was die Prüfungen sagen, und Schablonen in wahrer Größe drucken.</translation>
    </message>
    <message>
        <source>Plane geometry; all lengths are enlarged by the shrinkage (handbook rule of pattern making: length × 1 / (1 − shrinkage)).</source>
        <translation>Ebene Geometrie; alle Längen sind um den Schwund vergrößert (Handregel des Modellbaus: Länge × 1 / (1 − Schwund)).</translation>
    </message>
    <message>
        <source>Plans cast foam inserts for drawers: layout, checks, foam, templates.</source>
        <translation>Plant gegossene Schaumeinsätze für Schubladen: Anordnung, Prüfungen, Schaum, Schablonen.</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Druckplatte</translation>
    </message>
    <message>
        <source>Plate %1, box and base %2</source>
        <translation>Druckplatte %1, Kasten und Grundplatte %2</translation>
    </message>
    <message>
        <source>Plate and box</source>
        <translation>Druckplatte und Kasten</translation>
    </message>
    <message>
        <source>Plate tables for an even load.</source>
        <translation>Plattentafeln für gleichmäßige Last.</translation>
    </message>
    <message>
        <source>Pockets came out %1 ± %2 wider than planned.</source>
        <translation>Aussparungen wurden %1 ± %2 breiter als geplant.</translation>
    </message>
    <message>
        <source>Pockets chosen: %1.</source>
        <translation>Gewählte Aussparungen: %1.</translation>
    </message>
    <message>
        <source>Pockets measured</source>
        <translation>Gemessene Aussparungen</translation>
    </message>
    <message>
        <source>Pockets of this drawer</source>
        <translation>Aussparungen dieser Schublade</translation>
    </message>
    <message>
        <source>Pockets pasted: %1. Drag them to their place.</source>
        <translation>Aussparungen eingefügt: %1. An ihren Platz ziehen.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Poiseuille’s flow through each hole with both ends’ losses; it goes with the fourth power of the drill.</source>
        <translation>Strömung nach Poiseuille durch jedes Loch mit den Verlusten beider Enden; sie geht mit der vierten Potenz des Bohrers.</translation>
    </message>
    <message>
        <source>Portrait</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Pot life: when the cup’s foam started to rise.</source>
        <translation>Topfzeit: als der Schaum im Becher zu steigen begann.</translation>
    </message>
    <message>
        <source>Pour &amp;rate</source>
        <translation>&amp;Gießrate</translation>
    </message>
    <message>
        <source>Pour all the same?</source>
        <translation>Trotzdem gießen?</translation>
    </message>
    <message>
        <source>Pour card: </source>
        <translation>Gießkarte: </translation>
    </message>
    <message>
        <source>Pour cards and &amp;rescue card…</source>
        <translation>G&amp;ießkarten und Notfallkarte…</translation>
    </message>
    <message>
        <source>Pour cards and rescue card</source>
        <translation>Gießkarten und Notfallkarte</translation>
    </message>
    <message>
        <source>Pour da&amp;y</source>
        <translation>Gieß&amp;tag</translation>
    </message>
    <message>
        <source>Pour day</source>
        <translation>Gießtag</translation>
    </message>
    <message>
        <source>Pour day: %1</source>
        <translation>Gießtag: %1</translation>
    </message>
    <message>
        <source>Pour in the order of the numbers, so much at each: slots first, the widest channel last.</source>
        <translation>In der Reihenfolge der Nummern gießen, jeweils so viel: erst Schlitze, der breiteste Kanal zuletzt.</translation>
    </message>
    <message>
        <source>Pour map: mold, MIRRORED, from above</source>
        <translation>Gießplan: Form, GESPIEGELT, von oben</translation>
    </message>
    <message>
        <source>Pouring a batch %1 s (reckoned with until now: %2), setting the plate on %3 s (%4), a closure %5 s (%6). Reckon with them from now on?</source>
        <translation>Einen Ansatz gießen %1 s (bisher gerechnet: %2), Druckplatte auflegen %3 s (%4), ein Verschluss %5 s (%6). Künftig damit rechnen?</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Pressure plate</source>
        <translation>Druckplatte</translation>
    </message>
    <message>
        <source>Pressure plate, %1 vents</source>
        <translation>Druckplatte, %1 Entlüftungslöcher</translation>
    </message>
    <message>
        <source>Pressure plate, one vent</source>
        <translation>Druckplatte, ein Entlüftungsloch</translation>
    </message>
    <message>
        <source>Pressure plate, to drill</source>
        <translation>Druckplatte, zum Bohren</translation>
    </message>
    <message>
        <source>Pressure plate: mold, MIRRORED, from above</source>
        <translation>Druckplatte: Form, GESPIEGELT, von oben</translation>
    </message>
    <message>
        <source>Pressure when closed</source>
        <translation>Druck geschlossen</translation>
    </message>
    <message>
        <source>Preview: %1</source>
        <translation>Vorschau: %1</translation>
    </message>
    <message>
        <source>Price of each set over the sets of a run</source>
        <translation>Preis je Satz über den Sätzen einer Serie</translation>
    </message>
    <message>
        <source>Price: </source>
        <translation>Preis: </translation>
    </message>
    <message>
        <source>Prick the screw points (ringed crosses) through the paper and drill them; trace the blocks. Outlines are sealed sizes, “h” is the sealed height.</source>
        <translation>Schraubpunkte (Kreuze im Ring) durch das Papier anstechen und bohren; Klötze anreißen. Umrisse sind versiegelte Maße, „h“ ist die versiegelte Höhe.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print &amp;to</source>
        <translation>Drucken &amp;auf</translation>
    </message>
    <message>
        <source>Print at 100 %, not scaled to the page; hold a ruler to both scale bars.</source>
        <translation>Mit 100 % drucken, nicht an die Seite angepasst; ein Lineal an beide Messbalken halten.</translation>
    </message>
    <message>
        <source>Print at 100 %, not scaled to the page, in the printer’s own window too. Hold a ruler to both scale bars of every page before you cut.</source>
        <translation>Mit 100 % drucken, nicht an die Seite angepasst, auch im Fenster des Druckers. Vor dem Sägen an beide Messbalken jeder Seite ein Lineal halten.</translation>
    </message>
    <message>
        <source>Print at 100 %, not scaled to the page: then the scales in the title blocks hold.</source>
        <translation>Mit 100 % drucken, nicht an die Seite angepasst: Dann gelten die Maßstäbe in den Schriftfeldern.</translation>
    </message>
    <message>
        <source>Print at 100 %</source>
        <translation>Mit 100 % drucken</translation>
    </message>
    <message>
        <source>Print at 100 %, not scaled to the page.</source>
        <translation>Mit 100 %, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>Print every page at 100 %, not scaled to the page.</source>
        <translation>Jede Seite mit 100 % drucken, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>Print to</source>
        <translation>Drucken auf</translation>
    </message>
    <message>
        <source>Put back what is being moved</source>
        <translation>Bewegtes zurücksetzen</translation>
    </message>
    <message>
        <source>Menu key, or Shift+F10</source>
        <translation>Menütaste oder Umschalt+F10</translation>
    </message>
    <message>
        <source>The menu of what is chosen</source>
        <translation>Das Menü zum Gewählten</translation>
    </message>
    <message>
        <source>Rou&amp;gh estimate…</source>
        <translation>Kostenschä&amp;tzung…</translation>
    </message>
    <message>
        <source>Rough estimate</source>
        <translation>Kostenschätzung</translation>
    </message>
    <message>
        <source>R&amp;oom&apos;s temperature</source>
        <translation>R&amp;aumtemperatur</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>RECHTS</translation>
    </message>
    <message>
        <source>RIGHT of the drawer</source>
        <translation>Schublade RECHTS</translation>
    </message>
    <message>
        <source>Ratio and densities by the foam’s label, as entered.</source>
        <translation>Verhältnis und Dichten nach dem Etikett des Schaums, wie eingegeben.</translation>
    </message>
    <message>
        <source>Read from the cup’s rise: a smooth curve through start, half and full.</source>
        <translation>Aus dem Becher gelesen: eine glatte Kurve durch Beginn, halb und voll.</translation>
    </message>
    <message>
        <source>Ready.</source>
        <translation>Bereit.</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>Rectangle: %1, up to %2 further out</source>
        <translation>Rechteck: %1, bis %2 weiter außen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Replace by another object</source>
        <translation>Durch anderen Gegenstand ersetzen</translation>
    </message>
    <message>
        <source>Replace object</source>
        <translation>Gegenstand ersetzen</translation>
    </message>
    <message>
        <source>Rescue card</source>
        <translation>Notfallkarte</translation>
    </message>
    <message>
        <source>Reserve and what stays in the bucket: common practice, no source.</source>
        <translation>Reserve und Rest im Eimer: üblich, ohne Quelle.</translation>
    </message>
    <message>
        <source>Revision %1: templates printed before say an older one.</source>
        <translation>Revision %1: Früher gedruckte Schablonen nennen eine ältere.</translation>
    </message>
    <message>
        <source>Rise and mix</source>
        <translation>Aufschäumen und mischen</translation>
    </message>
    <message>
        <source>Rise over time, by the label and by the cups</source>
        <translation>Aufschäumen über der Zeit, nach Etikett und nach Bechern</translation>
    </message>
    <message>
        <source>E&amp;xpansion</source>
        <translation>E&amp;xpansion</translation>
    </message>
    <message>
        <source>Rises ×%1 here, after the label’s ×%2; ± %3 % is reckoned with, our guess.</source>
        <translation>Steigfaktor hier ×%1, nach Etikett ×%2; gerechnet wird mit ± %3 %, unsere Annahme.</translation>
    </message>
    <message>
        <source>Rods go right through: with the plate on the box, drill on through box wall and base. Under the base each ends in a nut on a wide washer, or on a piece of lumber like the one above.</source>
        <translation>Stangen gehen ganz durch: mit der Druckplatte auf dem Kasten weiter durch Kastenwand und Grundplatte bohren. Unter der Grundplatte endet jede in einer Mutter auf breiter Scheibe oder auf einem Kantholz wie oben.</translation>
    </message>
    <message>
        <source>Room to stir and what stays in the bucket: common practice, no source.</source>
        <translation>Raum zum Rühren und Rest im Eimer: üblich, ohne Quelle.</translation>
    </message>
    <message>
        <source>Rounded rectangle</source>
        <translation>Gerundetes Rechteck</translation>
    </message>
    <message>
        <source>Run sheet, shop open from %1 to %2</source>
        <translation>Ablaufblatt, Werkstatt offen von %1 bis %2</translation>
    </message>
    <message>
        <source>S&amp;hop and day of the pour…</source>
        <translation>&amp;Werkstatt und Gießtag…</translation>
    </message>
    <message>
        <source>S&amp;ides</source>
        <translation>S&amp;eiten</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>S&amp;ummary…</source>
        <translation>Zus&amp;ammenfassung…</translation>
    </message>
    <message>
        <source>SI 2019</source>
        <translation>SI 2019</translation>
    </message>
    <message>
        <source>SVG files in a folder</source>
        <translation>SVG-Dateien in einem Ordner</translation>
    </message>
    <message>
        <source>Sa&amp;w&apos;s step</source>
        <translation>Schritt &amp;der Säge</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save the job</source>
        <translation>Auftrag speichern</translation>
    </message>
    <message>
        <source>Save the work?</source>
        <translation>Arbeit speichern?</translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation>Gespeichert als „%1“.</translation>
    </message>
    <message>
        <source>Saved; the version before could not be kept: %1</source>
        <translation>Gespeichert; die vorige Fassung ließ sich nicht aufheben: %1</translation>
    </message>
    <message>
        <source>Saw and drills</source>
        <translation>Säge und Bohrer</translation>
    </message>
    <message>
        <source>Saw, fence by fence</source>
        <translation>Sägen, Anschlag für Anschlag</translation>
    </message>
    <message>
        <source>Says which fits, walls and floors are practice</source>
        <translation>Sagt, welche Passungen, Stege und Böden üblich sind</translation>
    </message>
    <message>
        <source>Scal&amp;e&apos;s step</source>
        <translation>Schritt der &amp;Waage</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Sealer, release, clay and glue are not in it.</source>
        <translation>Versiegelung, Trennmittel, Modelliermasse und Leim sind nicht enthalten.</translation>
    </message>
    <message>
        <source>Seconds a &amp;closure</source>
        <translation>Sekunden je &amp;Verschluss</translation>
    </message>
    <message>
        <source>Seconds are estimates for today&apos;s temperature (%1). Everybody in gloves, goggles and the breathing protection of the safety data sheet, moving air; that sheet comes first. When it goes wrong: the rescue card.</source>
        <translation>Sekunden sind Schätzungen für die heutige Temperatur (%1). Alle mit Handschuhen, Schutzbrille und Atemschutz nach Sicherheitsdatenblatt, gelüftet; dieses Blatt geht vor. Wenn es schiefgeht: die Notfallkarte.</translation>
    </message>
    <message>
        <source>Seen in the mold: mirrored left to right, enlarged by the shrinkage</source>
        <translation>In der Form gesehen: links und rechts gespiegelt, um den Schwund vergrößert</translation>
    </message>
    <message>
        <source>Sent to “%1”; pages: %2. Hold a ruler to the scales before you cut.</source>
        <translation>An „%1“ gesendet; Seiten: %2. Vor dem Sägen ein Lineal an die Maßstäbe halten.</translation>
    </message>
    <message>
        <source>Set by hand to %1; automatic would be %2.</source>
        <translation>Von Hand auf %1 gesetzt; automatisch wäre %2.</translation>
    </message>
    <message>
        <source>Set by you; checked like any other.</source>
        <translation>Von Hand gesetzt; geprüft wie alles andere.</translation>
    </message>
    <message>
        <source>Set each object on its outline. Close the drawer: nothing may strike.</source>
        <translation>Jeden Gegenstand auf seinen Umriss stellen. Schublade schließen: Nichts darf anstoßen.</translation>
    </message>
    <message>
        <source>Sets in the run</source>
        <translation>Sätze in der Serie</translation>
    </message>
    <message>
        <source>Several outlines of one drawing, each a level, in their places to each other</source>
        <translation>Mehrere Umrisse einer Zeichnung, je eine Stufe, in ihrer Lage zueinander</translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation>&amp;Gestalt</translation>
    </message>
    <message>
        <source>Shape %1</source>
        <translation>Umriss %1</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Shop &amp;minimums…</source>
        <translation>&amp;Mindestmaße der Werkstatt…</translation>
    </message>
    <message>
        <source>Shop minimums</source>
        <translation>Mindestmaße der Werkstatt</translation>
    </message>
    <message>
        <source>Shop…</source>
        <translation>Werkstatt…</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show all of it</source>
        <translation>Ganz zeigen</translation>
    </message>
    <message>
        <source>Show the figures</source>
        <translation>Zahlen zeigen</translation>
    </message>
    <message>
        <source>Show the head alone</source>
        <translation>Nur den Kopf zeigen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Size: %1 × %2.</source>
        <translation>Größe: %1 × %2.</translation>
    </message>
    <message>
        <source>Sizes to come</source>
        <translation>Maße folgen</translation>
    </message>
    <message>
        <source>Slide notch</source>
        <translation>Mulde schieben</translation>
    </message>
    <message>
        <source>Snap</source>
        <translation>Einrasten</translation>
    </message>
    <message>
        <source>Snapping is off (S); Esc puts it back.</source>
        <translation>Einrasten ist aus (S); Esc setzt zurück.</translation>
    </message>
    <message>
        <source>So many must be in when the foam begins to push, after %1. From then on as many as the pressure at each moment needs, with the worst closure’s share.</source>
        <translation>So viele müssen angezogen sein, wenn der Schaum zu drücken beginnt, nach %1. Von da an so viele, wie der Druck in jedem Moment verlangt, mit dem Anteil des am stärksten gezogenen Verschlusses.</translation>
    </message>
    <message>
        <source>Vapors of solvents, for cleaning and in release agents, can catch fire below room temperature: no flame, spark or heater near them; keep rags in a closed metal bin.</source>
        <translation>Dämpfe von Lösemitteln zum Reinigen und in Trennmitteln können sich schon unter Raumtemperatur entzünden: keine Flamme, Funken oder Heizung in der Nähe; Lappen in einen geschlossenen Metalleimer.</translation>
    </message>
    <message>
        <source>Some steps of a pour of this drawer are marked already. Go on there? “No” begins a new one; the log keeps both.</source>
        <translation>Einige Schritte eines Gusses dieser Schublade sind schon abgehakt. Dort fortsetzen? „Nein“ beginnt einen neuen; das Protokoll behält beide.</translation>
    </message>
    <message>
        <source>Something to mend here</source>
        <translation>Hier ist etwas zu beheben</translation>
    </message>
    <message>
        <source>Space, held</source>
        <translation>Leertaste, gehalten</translation>
    </message>
    <message>
        <source>Space: done    Backspace: take back    Esc: leave, the clock goes on</source>
        <translation>Leertaste: erledigt    Rücktaste: zurücknehmen    Esc: verlassen, die Uhr läuft weiter</translation>
    </message>
    <message>
        <source>Spread evenly</source>
        <translation>Gleichmäßig verteilen</translation>
    </message>
    <message>
        <source>Spread evenly, front to back</source>
        <translation>Gleichmäßig verteilen, von vorn nach hinten</translation>
    </message>
    <message>
        <source>Spread evenly, left to right</source>
        <translation>Gleichmäßig verteilen, von links nach rechts</translation>
    </message>
    <message>
        <source>Squeeze-out and pressure that is held, by number and drill of the vents</source>
        <translation>Austritt und gehaltener Druck, nach Zahl und Bohrer der Entlüftungslöcher</translation>
    </message>
    <message>
        <source>Squeezed by a quarter; data sheet</source>
        <translation>Um ein Viertel gestaucht; Datenblatt</translation>
    </message>
    <message>
        <source>Start &amp;from</source>
        <translation>A&amp;usgehen von</translation>
    </message>
    <message>
        <source>Start a job with it</source>
        <translation>Auftrag damit beginnen</translation>
    </message>
    <message>
        <source>Start a new re&amp;vision</source>
        <translation>&amp;Neue Revision beginnen</translation>
    </message>
    <message>
        <source>Stiffeners</source>
        <translation>Versteifungen</translation>
    </message>
    <message>
        <source>Strips for the box walls’ screws</source>
        <translation>Streifen für die Schrauben der Kastenwände</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Zusammenfassung</translation>
    </message>
    <message>
        <source>Swa&amp;p the two</source>
        <translation>Die &amp;beiden tauschen</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Tauschen</translation>
    </message>
    <message>
        <source>Symmetric</source>
        <translation>Symmetrisch</translation>
    </message>
    <message>
        <source>T&amp;ype place and turn…</source>
        <translation>&amp;Stelle und Drehung eingeben…</translation>
    </message>
    <message>
        <source>TOP FACE of the base, print up;</source>
        <translation>OBERSEITE der Grundplatte, Druck oben;</translation>
    </message>
    <message>
        <source>TOP FACE of the pressure plate, print up;</source>
        <translation>OBERSEITE der Druckplatte, Druck oben;</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Tabloid, 11 × 17 in</source>
        <translation>Tabloid, 11 × 17 in</translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Take a mark back</source>
        <translation>Haken zurücknehmen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take finger notch away</source>
        <translation>Griffmulde entfernen</translation>
    </message>
    <message>
        <source>Take the build-up apa&amp;rt</source>
        <translation>Aufbau &amp;zerlegen</translation>
    </message>
    <message>
        <source>Take the chosen corner away</source>
        <translation>Gewählte Ecke entfernen</translation>
    </message>
    <message>
        <source>Take the foam “%1”</source>
        <translation>Den Schaum „%1“ nehmen</translation>
    </message>
    <message>
        <source>Take these times?</source>
        <translation>Diese Zeiten nehmen?</translation>
    </message>
    <message>
        <source>Take this block away (Delete)</source>
        <translation>Diesen Klotz entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this cast away</source>
        <translation>Diesen Guss entfernen</translation>
    </message>
    <message>
        <source>Take this corner away (Delete)</source>
        <translation>Diese Ecke entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this cup away</source>
        <translation>Diesen Becher entfernen</translation>
    </message>
    <message>
        <source>Take this cylinder away (Delete)</source>
        <translation>Diesen Zylinder entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this foam</source>
        <translation>Diesen Schaum nehmen</translation>
    </message>
    <message>
        <source>Take this height away (Delete)</source>
        <translation>Diese Höhe entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this kit away (Delete)</source>
        <translation>Dieses Gebinde entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this level away</source>
        <translation>Diese Stufe entfernen</translation>
    </message>
    <message>
        <source>Take this obstruction away</source>
        <translation>Dieses Hindernis entfernen</translation>
    </message>
    <message>
        <source>Take this outline</source>
        <translation>Diesen Umriss nehmen</translation>
    </message>
    <message>
        <source>Take this pocket away (Delete)</source>
        <translation>Diese Aussparung entfernen (Entf)</translation>
    </message>
    <message>
        <source>Takes the mold apart (Up and Down on the sheet)</source>
        <translation>Zerlegt die Form (Auf und Ab auf dem Blatt)</translation>
    </message>
    <message>
        <source>Takes two hands: %1 hold it, it weighs %2.</source>
        <translation>Braucht zwei Hände: %1 halten es, es wiegt %2.</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Schablonen</translation>
    </message>
    <message>
        <source>Templates, true size</source>
        <translation>Schablonen, wahre Größe</translation>
    </message>
    <message>
        <source>Test &amp;cup…</source>
        <translation>Probe&amp;becher…</translation>
    </message>
    <message>
        <source>Test cup</source>
        <translation>Probebecher</translation>
    </message>
    <message>
        <source>Than planned, its whole width; below 0: narrower</source>
        <translation>Als geplant, ganze Breite; unter 0: schmaler</translation>
    </message>
    <message>
        <source>That makes more than %1 pockets</source>
        <translation>Das ergibt mehr als %1 Aussparungen</translation>
    </message>
    <message>
        <source>That makes no copy</source>
        <translation>Das ergibt keine Kopie</translation>
    </message>
    <message>
        <source>The base is the pattern board with what carries the walls. Lay it on its top face, printed side up, its outer line on the edges, arrow F to the drawer’s front.</source>
        <translation>Die Grundplatte ist die Musterplatte mit dem, was die Wände trägt. Auf ihre Oberseite legen, bedruckte Seite oben, äußere Linie auf die Kanten, Pfeil F zur Vorderseite der Schublade.</translation>
    </message>
    <message>
        <source>The built-in foams are invented, generic ones: a data sheet’s figures go in under Job, Foam. The layout stays as it is; a softer foam wants wider walls.</source>
        <translation>Die eingebauten Schäume sind erfunden und allgemein: Die Zahlen eines Datenblatts kommen unter Auftrag, Schaum hinein. Die Anordnung bleibt, wie sie ist; weicherer Schaum will breitere Stege.</translation>
    </message>
    <message>
        <source>The cheapest board that is thick enough for a screw in its edge and bows little enough as a wall.</source>
        <translation>Die billigste Platte, die dick genug für eine Schraube in der Kante ist und sich als Wand wenig genug biegt.</translation>
    </message>
    <message>
        <source>The cheapest of the shop’s boards, stiffeners and closures that keeps every limit and can be closed in time.</source>
        <translation>Die billigsten Platten, Versteifungen und Verschlüsse der Werkstatt, die jede Grenze einhalten und rechtzeitig zu schließen sind.</translation>
    </message>
    <message>
        <source>The clipboard holds no pockets, no object and no list.</source>
        <translation>In der Zwischenablage sind keine Aussparungen, kein Gegenstand und keine Liste.</translation>
    </message>
    <message>
        <source>The closed mold, measured before the pour. Empty fields count as planned, in gray; heights of walls by their mean.</source>
        <translation>Die geschlossene Form, vor dem Guss gemessen. Leere Felder zählen wie geplant, in Grau; Wandhöhen mit dem Mittel.</translation>
    </message>
    <message>
        <source>The container decides: %1 in each, it takes %2.</source>
        <translation>Das Mischgefäß entscheidet: %1 in jedem, es nimmt %2.</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>The demo job can’t be read</source>
        <translation>Der Beispielauftrag ist nicht lesbar</translation>
    </message>
    <message>
        <source>The earlier of two curves of the rise, as it is not known which one the foam takes.</source>
        <translation>Die frühere von zwei Kurven des Aufschäumens, da nicht bekannt ist, welcher der Schaum folgt.</translation>
    </message>
    <message>
        <source>The fewest that fit their container and are poured before the foam starts. Batches are mixed side by side: each needs a person and a mixer.</source>
        <translation>Die wenigsten, die in ihr Mischgefäß passen und gegossen sind, bevor der Schaum beginnt. Ansätze werden nebeneinander gemischt: Jeder braucht einen Menschen und einen Mischer.</translation>
    </message>
    <message>
        <source>The fit &amp;allows for the band</source>
        <translation>Passung rechnet die &amp;Spanne mit ein</translation>
    </message>
    <message>
        <source>The greatest at the pressure to build for, off the heads of the closures.</source>
        <translation>Die größte beim Bemessungsdruck, außerhalb der Köpfe der Verschlüsse.</translation>
    </message>
    <message>
        <source>The greatest lift along the opening’s edge at the pressure when closed, with closures half as stiff: foam that gets in there is trimmed off as flash.</source>
        <translation>Das größte Abheben entlang des Randes der Öffnung beim Druck in der geschlossenen Form, mit halb so steifen Verschlüssen: Schaum, der dort eindringt, wird als Grat abgeschnitten.</translation>
    </message>
    <message>
        <source>The greatest lift over the opening at the pressure when closed: it is the back of the insert, which nobody sees.</source>
        <translation>Das größte Abheben über der Öffnung beim Druck in der geschlossenen Form: Das ist die Unterseite des Einsatzes, die niemand sieht.</translation>
    </message>
    <message>
        <source>The greatest pull at the pressure to build for, with closures twice as stiff. The plate pries at its rim, so the worst pulls about twice what an even share would be.</source>
        <translation>Die größte Zugkraft beim Bemessungsdruck, mit doppelt so steifen Verschlüssen. Die Druckplatte hebelt an ihrem Rand, auf den am stärksten gezogenen Verschluss kommt also etwa das Doppelte des gleichen Anteils.</translation>
    </message>
    <message>
        <source>The guide’s text</source>
        <translation>Text des Handbuchs</translation>
    </message>
    <message>
        <source>The heaviest foot is that of “%1”.</source>
        <translation>Der schwerste Fuß ist der von „%1“.</translation>
    </message>
    <message>
        <source>The hour has no price: work is not in it.</source>
        <translation>Die Stunde hat keinen Preis: Arbeit ist nicht enthalten.</translation>
    </message>
    <message>
        <source>The insert as one looks into the drawer</source>
        <translation>Der Einsatz, wie man in die Schublade schaut</translation>
    </message>
    <message>
        <source>The insert&apos;s, or a bar&apos;s</source>
        <translation>Des Einsatzes oder eines Stabs</translation>
    </message>
    <message>
        <source>The inserts weigh</source>
        <translation>Gewicht der Einsätze</translation>
    </message>
    <message>
        <source>The job has no other object.</source>
        <translation>Der Auftrag hat keinen anderen Gegenstand.</translation>
    </message>
    <message>
        <source>The job names no kits for this foam.</source>
        <translation>Der Auftrag nennt keine Gebinde für diesen Schaum.</translation>
    </message>
    <message>
        <source>The job was not saved</source>
        <translation>Der Auftrag wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>The kits have no prices: foam is not in it.</source>
        <translation>Die Gebinde haben keine Preise: Schaum ist nicht enthalten.</translation>
    </message>
    <message>
        <source>The least overpack that fills the mold at the low end</source>
        <translation>Die geringste Überfüllung, die die Form am unteren Ende füllt</translation>
    </message>
    <message>
        <source>The length runs along the pocket’s edge. A thumb and a finger want about 60 × 28 mm (our guess).</source>
        <translation>Die Länge läuft am Rand der Aussparung. Daumen und Finger brauchen etwa 60 × 28 mm (unsere Annahme).</translation>
    </message>
    <message>
        <source>The limit is our guess.</source>
        <translation>Die Grenze ist unsere Annahme.</translation>
    </message>
    <message>
        <source>The limit is our guess; a gasket strip allows more.</source>
        <translation>Die Grenze ist unsere Annahme; ein Dichtband erlaubt mehr.</translation>
    </message>
    <message>
        <source>The log of a pour is kept in the job’s file: save it first.</source>
        <translation>Das Protokoll eines Gusses steht in der Auftragsdatei: erst speichern.</translation>
    </message>
    <message>
        <source>The longest box wall as a plate held at its four edges, at the pressure when closed.</source>
        <translation>Die längste Kastenwand als Platte, an vier Kanten gehalten, beim Druck in der geschlossenen Form.</translation>
    </message>
    <message>
        <source>The mold put together, a quarter cut away: turn it, take it apart</source>
        <translation>Die Form zusammengebaut, ein Viertel weggeschnitten: drehen, zerlegen</translation>
    </message>
    <message>
        <source>The mold’s box, and every sheet and length of the job with its cuts in order</source>
        <translation>Der Kasten der Form, und jede Platte und jedes Kantholz des Auftrags mit ihren Schnitten der Reihe nach</translation>
    </message>
    <message>
        <source>The numbers on the sheet are the order in which they are tightened: the middles of the sides, corners, halves, always opposite pairs. Loosen them in reverse.</source>
        <translation>Die Nummern auf dem Blatt sind die Reihenfolge: Seitenmitten, Ecken, Hälften, immer gegenüberliegende Paare. Umgekehrt lösen.</translation>
    </message>
    <message>
        <source>The object is on the clipboard, for this job or another.</source>
        <translation>Der Gegenstand ist in der Zwischenablage, für diesen Auftrag oder einen anderen.</translation>
    </message>
    <message>
        <source>The photo is being measured</source>
        <translation>Das Foto wird gemessen</translation>
    </message>
    <message>
        <source>The plan’s dose would fill it with liquid alone: do not pour that much.</source>
        <translation>Die geplante Dosis würde sie schon flüssig füllen: nicht so viel gießen.</translation>
    </message>
    <message>
        <source>The plate comes on at %1, which is %2 too late in the worse case: start closures before the pour, let one more person close, or cool the parts.</source>
        <translation>Die Druckplatte liegt bei %1 auf, im schlechteren Fall %2 zu spät: Verschlüsse vor dem Gießen ansetzen, noch jemanden schließen lassen oder die Komponenten kühlen.</translation>
    </message>
    <message>
        <source>The plate comes on at %1; it could be %2 later in the worse case. All closures take %3; %4 must be in when the mold is full.</source>
        <translation>Die Druckplatte liegt bei %1 auf; im schlechteren Fall dürfte es %2 später sein. Alle Verschlüsse brauchen %3; %4 müssen angezogen sein, wenn die Form voll ist.</translation>
    </message>
    <message>
        <source>Foam is at the plate then. The last moment to set the plate on may be sooner: see Closing.</source>
        <translation>Dann ist der Schaum an der Druckplatte. Der letzte Moment zum Auflegen kann früher sein: siehe Schließen.</translation>
    </message>
    <message>
        <source>The pour by seconds</source>
        <translation>Der Guss in Sekunden</translation>
    </message>
    <message>
        <source>The pour decides: it takes most of the pot life.</source>
        <translation>Das Gießen entscheidet: Es braucht den größten Teil der Topfzeit.</translation>
    </message>
    <message>
        <source>The pour second by second: rise, pressure, closures needed and in</source>
        <translation>Der Guss Sekunde für Sekunde: Aufschäumen, Druck, Verschlüsse nötig und angezogen</translation>
    </message>
    <message>
        <source>The pressure when closed with the squeeze-out gone: %1 were the foam half as viscous, %2 were it twice.</source>
        <translation>Der Druck in der geschlossenen Form nach dem Austritt: %1, wäre der Schaum halb so viskos, %2, wäre er es doppelt.</translation>
    </message>
    <message>
        <source>The profile has %1. %2</source>
        <translation>Das Profil hat %1. %2</translation>
    </message>
    <message>
        <source>The program places it again, where it is needed.</source>
        <translation>Das Programm platziert es wieder dorthin, wo es nötig ist.</translation>
    </message>
    <message>
        <source>The reserve is mixed but not poured. Pigment comes on top.</source>
        <translation>Die Reserve wird gemischt, aber nicht gegossen. Pigment kommt obendrauf.</translation>
    </message>
    <message>
        <source>The rise is free-rise volume over liquid volume, so this much liquid fills the mold with the overpack to spare. An overpack of 10 to 25 % is common practice, no source.</source>
        <translation>Der Steigfaktor ist frei aufgeschäumtes durch flüssiges Volumen; so viel Flüssigkeit füllt also die Form mit der Überfüllung als Zugabe. Überfüllung von 10 bis 25 % ist üblich, ohne Quelle.</translation>
    </message>
    <message>
        <source>The same dose if the foam rises less into a mold that came out deeper, as expected, and more into one that came out shallower. ×1.00 just fills.</source>
        <translation>Dieselbe Dosis, wenn der Schaum in einer tieferen Form weniger aufschäumt, wie erwartet, und in einer flacheren mehr. ×1,00 füllt gerade.</translation>
    </message>
    <message>
        <source>The same, &amp;cured</source>
        <translation>Dieselbe, aus&amp;gehärtet</translation>
    </message>
    <message>
        <source>The sheet shows it for every place, in bands.</source>
        <translation>Das Blatt zeigt es für jede Stelle, in Bändern.</translation>
    </message>
    <message>
        <source>A price for the hour stands under Job, Shop and day of the pour.</source>
        <translation>Ein Preis für die Stunde steht unter Auftrag, Werkstatt und Gießtag.</translation>
    </message>
    <message>
        <source>The smallest it shows</source>
        <translation>Der kleinste, den sie zeigt</translation>
    </message>
    <message>
        <source>The true outline lies within a band of %1.</source>
        <translation>Der wahre Umriss liegt in einem Band von %1.</translation>
    </message>
    <message>
        <source>The version on disk is open.</source>
        <translation>Die gespeicherte Fassung ist offen.</translation>
    </message>
    <message>
        <source>The whole</source>
        <translation>Das Ganze</translation>
    </message>
    <message>
        <source>Dunked as far as it sits in the foam</source>
        <translation>So weit getaucht, wie er im Schaum sitzt</translation>
    </message>
    <message>
        <source>There is no drawer to paste into.</source>
        <translation>Es gibt keine Schublade zum Einfügen.</translation>
    </message>
    <message>
        <source>There is no mold yet: it needs pockets that can be made.</source>
        <translation>Noch keine Form: Sie braucht Aussparungen, die sich machen lassen.</translation>
    </message>
    <message>
        <source>There is no plate yet: it needs a mold and a dose.</source>
        <translation>Noch keine Druckplatte: Sie braucht eine Form und eine Dosis.</translation>
    </message>
    <message>
        <source>There is nothing to cut yet: it needs a mold and a dose.</source>
        <translation>Noch nichts zu sägen: Es braucht eine Form und eine Dosis.</translation>
    </message>
    <message>
        <source>These differ by more than a tenth: take a smaller drill, or peg the vents as foam shows.</source>
        <translation>Diese weichen um mehr als ein Zehntel ab: einen kleineren Bohrer nehmen oder die Entlüftungslöcher zustöpseln, sobald Schaum erscheint.</translation>
    </message>
    <message>
        <source>They &amp;cover</source>
        <translation>Sie be&amp;decken</translation>
    </message>
    <message>
        <source>They stand off the places where air is left last, where that can be: vents belong there.</source>
        <translation>Sie stehen, wo möglich, nicht über den Stellen, wo zuletzt Luft bleibt: Dort gehören Entlüftungslöcher hin.</translation>
    </message>
    <message>
        <source>Thicker than the drawer is high</source>
        <translation>Dicker als die Schublade hoch</translation>
    </message>
    <message>
        <source>Thickness of the s&amp;ealer</source>
        <translation>Dicke der Vers&amp;iegelung</translation>
    </message>
    <message>
        <source>Thin air lets foam rise more</source>
        <translation>In dünner Luft schäumt es weiter auf</translation>
    </message>
    <message>
        <source>Thin-gap flow of evenly expanding foam over the whole rise (an obstacle problem; Richardson 1972, Elliott and Janovsky 1981).</source>
        <translation>Fließen im dünnen Spalt von gleichmäßig wachsendem Schaum über das ganze Aufschäumen (ein Hindernisproblem; Richardson 1972, Elliott und Janovsky 1981).</translation>
    </message>
    <message>
        <source>This cast</source>
        <translation>Dieser Guss</translation>
    </message>
    <message>
        <source>This drawer has no dose yet: the checks say why.</source>
        <translation>Diese Schublade hat noch keine Dosis: Die Prüfungen sagen, warum.</translation>
    </message>
    <message>
        <source>This drawer has no insert.</source>
        <translation>Diese Schublade hat keinen Einsatz.</translation>
    </message>
    <message>
        <source>This drawing cannot be read</source>
        <translation>Diese Zeichnung ist nicht lesbar</translation>
    </message>
    <message>
        <source>This is common practice, not the maker of your foam speaking: the material&apos;s own data and safety sheets come first.</source>
        <translation>Das ist übliche Praxis, nicht der Hersteller des Schaums: Dessen Daten und Sicherheitsdatenblätter gehen vor.</translation>
    </message>
    <message>
        <source>This is no file</source>
        <translation>Das ist keine Datei</translation>
    </message>
    <message>
        <source>This job&apos;s: %1</source>
        <translation>Dieses Auftrags: %1</translation>
    </message>
    <message>
        <source>This mold</source>
        <translation>Diese Form</translation>
    </message>
    <message>
        <source>This mold has no dose yet: see the checks.</source>
        <translation>Diese Form hat noch keine Dosis: siehe Prüfungen.</translation>
    </message>
    <message>
        <source>This object has no pocket in this drawer.</source>
        <translation>Dieser Gegenstand hat in dieser Schublade keine Aussparung.</translation>
    </message>
    <message>
        <source>This picture is being worked out…</source>
        <translation>Dieses Bild wird noch berechnet…</translation>
    </message>
    <message>
        <source>Throw it away?</source>
        <translation>Wegwerfen?</translation>
    </message>
    <message>
        <source>Throw the unsaved work on “%1” away for good?</source>
        <translation>Die ungespeicherte Arbeit an „%1“ endgültig wegwerfen?</translation>
    </message>
    <message>
        <source>Tidy</source>
        <translation>Aufräumen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Left empty above, as a multiple of the liquid</source>
        <translation>Leer darüber, als Vielfaches der Flüssigkeit</translation>
    </message>
    <message>
        <source>Tit&amp;le…</source>
        <translation>Tit&amp;el…</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Title of the job</source>
        <translation>Titel des Auftrags</translation>
    </message>
    <message>
        <source>To another &amp;drawer…</source>
        <translation>&amp;In andere Schublade…</translation>
    </message>
    <message>
        <source>To another drawer</source>
        <translation>In andere Schublade</translation>
    </message>
    <message>
        <source>To build for, over the pressure when closed; our guess</source>
        <translation>Für den Bemessungsdruck, über dem Druck in der geschlossenen Form; unsere Annahme</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>To buy: %1 × </source>
        <translation>Zu kaufen: %1 × </translation>
    </message>
    <message>
        <source>To fill in</source>
        <translation>Ausfüllen</translation>
    </message>
    <message>
        <source>To the &amp;back instead of to the front</source>
        <translation>Nach &amp;hinten statt nach vorn</translation>
    </message>
    <message>
        <source>To the &amp;left instead of to the right</source>
        <translation>Nach &amp;links statt nach rechts</translation>
    </message>
    <message>
        <source>To the insert&apos;s edge; auto: the second beside deeper than %1</source>
        <translation>Bis zum Rand des Einsatzes; auto: das zweite neben tieferen als %1</translation>
    </message>
    <message>
        <source>Today, at %1 and %2: rises ×%3 (%4 free rise), by weight 100 A to %5 B, pot life %6 s, risen after %7 s.</source>
        <translation>Heute, bei %1 und %2: Steigfaktor ×%3 (%4 frei aufgeschäumt), nach Gewicht 100 A zu %5 B, Topfzeit %6 s, aufgeschäumt nach %7 s.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Too late to close: leave it open</source>
        <translation>Zu spät zum Schließen: offen lassen</translation>
    </message>
    <message>
        <source>Too many levels</source>
        <translation>Zu viele Stufen</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Trace an outline here: squares of 1/4 in</source>
        <translation>Hier einen Umriss nachzeichnen: Quadrate von 1/4 in</translation>
    </message>
    <message>
        <source>Trace an outline here: squares of 5 mm</source>
        <translation>Hier einen Umriss nachzeichnen: Quadrate von 5 mm</translation>
    </message>
    <message>
        <source>Trimmed</source>
        <translation>Beschnitten</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Turn 90° &amp;clockwise</source>
        <translation>Um 90° im &amp;Uhrzeigersinn</translation>
    </message>
    <message>
        <source>Turn the build-up to the le&amp;ft</source>
        <translation>Aufbau nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Turn the build-up to the ri&amp;ght</source>
        <translation>Aufbau nach &amp;rechts drehen</translation>
    </message>
    <message>
        <source>Turn to a typed angle</source>
        <translation>Auf eingegebenen Winkel drehen</translation>
    </message>
    <message>
        <source>Turn to the left</source>
        <translation>Nach links drehen</translation>
    </message>
    <message>
        <source>Turn to the right</source>
        <translation>Nach rechts drehen</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Gedreht</translation>
    </message>
    <message>
        <source>Turned rectangle</source>
        <translation>Gedrehtes Rechteck</translation>
    </message>
    <message>
        <source>Turned rectangle: %1, up to %2 further out</source>
        <translation>Gedrehtes Rechteck: %1, bis %2 weiter außen</translation>
    </message>
    <message>
        <source>Twice as fast for each 10 °C warmer: common practice, no source; published activation energies of 27 to 48 kJ/mol give somewhat less.</source>
        <translation>Je 10 °C wärmer doppelt so schnell: üblich, ohne Quelle; veröffentlichte Aktivierungsenergien von 27 bis 48 kJ/mol ergeben etwas weniger.</translation>
    </message>
    <message>
        <source>Two fingers do not reach it: a finger notch, or %1 over the face, would let them.</source>
        <translation>Zwei Finger kommen nicht hin: Eine Griffmulde oder %1 über der Oberseite würde helfen.</translation>
    </message>
    <message>
        <source>Two fingers reach it: it stands %1 over the face.</source>
        <translation>Zwei Finger kommen hin: Es steht %1 über die Oberseite.</translation>
    </message>
    <message>
        <source>Two fingers reach it: the notches have room for %1.</source>
        <translation>Zwei Finger kommen hin: Die Griffmulden haben Platz für %1.</translation>
    </message>
    <message>
        <source>Two rectangles</source>
        <translation>Zwei Rechtecke</translation>
    </message>
    <message>
        <source>Two rectangles: %1, up to %2 further out</source>
        <translation>Zwei Rechtecke: %1, bis %2 weiter außen</translation>
    </message>
    <message>
        <source>Type them like 2; 2.5; 3</source>
        <translation>So eingeben: 2; 2,5; 3</translation>
    </message>
    <message>
        <source>Under a pocket; auto: the second where wide or heavy</source>
        <translation>Unter einer Aussparung; auto: das zweite, wo breit oder schwer</translation>
    </message>
    <message>
        <source>Under a straightedge</source>
        <translation>Unter einem Lineal</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
    <message>
        <source>Unit of the rulers</source>
        <translation>Einheit der Lineale</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Unl&amp;ock</source>
        <translation>Frei&amp;geben</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Unlock vent</source>
        <translation>Entlüftungsloch freigeben</translation>
    </message>
    <message>
        <source>Unsaved work can’t be kept: %1</source>
        <translation>Ungespeicherte Arbeit lässt sich nicht aufheben: %1</translation>
    </message>
    <message>
        <source>Untitled job</source>
        <translation>Auftrag ohne Titel</translation>
    </message>
    <message>
        <source>Upright, or nearly</source>
        <translation>Aufrecht oder fast</translation>
    </message>
    <message>
        <source>Use a whole number</source>
        <translation>Eine ganze Zahl eingeben</translation>
    </message>
    <message>
        <source>Use this foam</source>
        <translation>Diesen Schaum nehmen</translation>
    </message>
    <message>
        <source>Used up</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>V%1 at %2, %3</source>
        <translation>V%1 bei %2, %3</translation>
    </message>
    <message>
        <source>V%1 at %2, %3, locked</source>
        <translation>V%1 bei %2, %3, festgehalten</translation>
    </message>
    <message>
        <source>V%1: drag it to lock it elsewhere, right-click for more.</source>
        <translation>V%1: ziehen, um es anderswo festzuhalten; Rechtsklick für mehr.</translation>
    </message>
    <message>
        <source>Vents</source>
        <translation>Entlüftungslöcher</translation>
    </message>
    <message>
        <source>Vents and pressure</source>
        <translation>Entlüftungslöcher und Druck</translation>
    </message>
    <message>
        <source>Vents keep two diameters of wood to closures and stiffeners.</source>
        <translation>Entlüftungslöcher halten zwei Durchmesser Holz zu Verschlüssen und Versteifungen.</translation>
    </message>
    <message>
        <source>Box w&amp;alls</source>
        <translation>Kasten&amp;wände</translation>
    </message>
    <message>
        <source>W&amp;alls between rows</source>
        <translation>Ste&amp;ge zwischen Reihen</translation>
    </message>
    <message>
        <source>Box wall</source>
        <translation>Kastenwand</translation>
    </message>
    <message>
        <source>Wall at least &amp;depth over</source>
        <translation>Steg mindestens &amp;Tiefe durch</translation>
    </message>
    <message>
        <source>Wall beside the deepest pocket</source>
        <translation>Steg neben der tiefsten Aussparung</translation>
    </message>
    <message>
        <source>Wall strips</source>
        <translation>Wandstreifen</translation>
    </message>
    <message>
        <source>Release agent on the mold</source>
        <translation>Trennmittel auf der Form</translation>
    </message>
    <message>
        <source>Weigh each part in a cup of its own; pigment, if any, goes into part B.</source>
        <translation>Jede Komponente in einem eigenen Becher wiegen; Pigment kommt in Komponente B.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What helps: screws started beforehand, one more person closing, clamps or rods with wing nuts, cooler parts.</source>
        <translation>Was hilft: vorher angesetzte Schrauben, noch jemand, der schließt, Zwingen oder Gewindestangen mit Flügelmuttern, kühlere Komponenten.</translation>
    </message>
    <message>
        <source>What is automatic is found anew after every change: the cheapest of the shop’s that holds and can be closed in time. What you fix is checked alike.</source>
        <translation>Automatisches wird nach jeder Änderung neu gesucht: das Billigste der Werkstatt, das hält und rechtzeitig zu schließen ist. Festgelegtes wird ebenso geprüft.</translation>
    </message>
    <message>
        <source>Place the rest over all &amp;drawers</source>
        <translation>Rest auf alle S&amp;chubladen verteilen</translation>
    </message>
    <message>
        <source>What is shut in when the foam has passed every vent, at the day’s air pressure. It is pressed together with the foam and raises the pressure when closed.</source>
        <translation>Was eingeschlossen ist, wenn der Schaum jedes Entlüftungsloch passiert hat, beim Luftdruck des Tages. Sie wird mit dem Schaum zusammengedrückt und erhöht den Druck in der geschlossenen Form.</translation>
    </message>
    <message>
        <source>What is still to do</source>
        <translation>Was noch zu tun ist</translation>
    </message>
    <message>
        <source>What squeezes out through the vents is not poured again.</source>
        <translation>Was durch die Entlüftungslöcher austritt, wird nicht noch einmal gegossen.</translation>
    </message>
    <message>
        <source>What the blade takes</source>
        <translation>Was das Blatt nimmt</translation>
    </message>
    <message>
        <source>What the figures stand on</source>
        <translation>Worauf die Zahlen stehen</translation>
    </message>
    <message>
        <source>What the foam is sold in. The cheapest combination of whole kits that covers the job is taken, what is at hand first.</source>
        <translation>Worin der Schaum verkauft wird. Genommen wird die billigste Zusammenstellung ganzer Gebinde, die reicht; Vorhandenes zuerst.</translation>
    </message>
    <message>
        <source>What to cut and buy is still being worked out: ask again in a moment.</source>
        <translation>Zuschnitt und Einkauf werden noch berechnet: gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>Where air stays</source>
        <translation>Wo Luft bleibt</translation>
    </message>
    <message>
        <source>Where air stays can’t be told yet: it needs a mold and a dose.</source>
        <translation>Wo Luft bleibt, ist noch nicht zu sagen: Es braucht eine Form und eine Dosis.</translation>
    </message>
    <message>
        <source>Where air stays: mold, MIRRORED, from above</source>
        <translation>Wo Luft bleibt: Form, GESPIEGELT, von oben</translation>
    </message>
    <message>
        <source>Where from</source>
        <translation>Woher</translation>
    </message>
    <message>
        <source>Where the hand put it right it is as good as the hand.</source>
        <translation>Wo die Hand ihn berichtigt hat, ist er so gut wie die Hand.</translation>
    </message>
    <message>
        <source>Where the air pockets are: this program’s own model. Corners and walls: common practice.</source>
        <translation>Wo die Lufteinschlüsse sind: eigenes Modell dieses Programms. Ecken und Wände: üblich.</translation>
    </message>
    <message>
        <source>Which drawer would do</source>
        <translation>Welche Schublade ginge</translation>
    </message>
    <message>
        <source>Which outline, largest first:</source>
        <translation>Welcher Umriss, größter zuerst:</translation>
    </message>
    <message>
        <source>Which outlines, each a level; largest first:</source>
        <translation>Welche Umrisse, je eine Stufe; größter zuerst:</translation>
    </message>
    <message>
        <source>Whichever takes fewer tiles</source>
        <translation>Was weniger Teilblätter braucht</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width at the &amp;front</source>
        <translation>Breite &amp;vorn</translation>
    </message>
    <message>
        <source>Width at the back</source>
        <translation>Breite hinten</translation>
    </message>
    <message>
        <source>Width in the middle</source>
        <translation>Breite in der Mitte</translation>
    </message>
    <message>
        <source>Width of the brush</source>
        <translation>Breite des Pinsels</translation>
    </message>
    <message>
        <source>With %1 closures, at a higher price. Fix it under Mold, How the molds are built, to have it.</source>
        <translation>Mit %1 Verschlüssen, teurer. Unter Form, Wie die Formen gebaut werden, festlegen, um sie zu bekommen.</translation>
    </message>
    <message>
        <source>With the foam “%1”. The spread is that of what is not known yet: pockets’ depths, area, number, the foam’s rise, hours, boards.</source>
        <translation>Mit dem Schaum „%1“. Die Spanne kommt von dem, was noch nicht bekannt ist: Tiefen, Fläche und Zahl der Aussparungen, Aufschäumen, Stunden, Platten.</translation>
    </message>
    <message>
        <source>Withdrawal from a box wall’s edge by the Wood Handbook’s formula, 31.8·√D·(L − D/3)^1.25·G² in N and mm; other closures as the shop’s list says.</source>
        <translation>Ausziehen aus der Kante der Kastenwand nach der Formel des Wood Handbook, 31,8·√D·(L − D/3)^1,25·G² in N und mm; andere Verschlüsse nach der Liste der Werkstatt.</translation>
    </message>
    <message>
        <source>Without the pressure plate, its closures and vents: they are not worked out yet</source>
        <translation>Ohne Druckplatte, ihre Verschlüsse und Entlüftungslöcher: Sie sind noch nicht berechnet</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Work that was not saved</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Working out plate, vents and cuts for the last change: %1 %</source>
        <translation>Druckplatte, Entlüftungslöcher und Zuschnitt zur letzten Änderung werden berechnet: %1 %</translation>
    </message>
    <message>
        <source>Write…</source>
        <translation>Schreiben…</translation>
    </message>
    <message>
        <source>Written to “%1”; drawings: %2.</source>
        <translation>Geschrieben nach „%1“; Zeichnungen: %2.</translation>
    </message>
    <message>
        <source>Written to “%1”; lists: %2.</source>
        <translation>Geschrieben nach „%1“; Listen: %2.</translation>
    </message>
    <message>
        <source>Written to “%1”; lists: %2. What to cut and buy is still being worked out.</source>
        <translation>Geschrieben nach „%1“; Listen: %2. Zuschnitt und Einkauf werden noch berechnet.</translation>
    </message>
    <message>
        <source>Written to “%1”; pages: %2.</source>
        <translation>Geschrieben nach „%1“; Seiten: %2.</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom about the pointer</source>
        <translation>Um den Zeiger zoomen</translation>
    </message>
    <message>
        <source>Zoom to the chec&amp;k</source>
        <translation>Prüfung heranh&amp;olen</translation>
    </message>
    <message>
        <source>a rule of this program</source>
        <translation>eine Regel dieses Programms</translation>
    </message>
    <message>
        <source>a screw’s by its diameter, depth and the box wall’s density</source>
        <translation>bei Schrauben nach Durchmesser, Tiefe und Dichte der Kastenwand</translation>
    </message>
    <message>
        <source>about</source>
        <translation>etwa</translation>
    </message>
    <message>
        <source>absolute</source>
        <translation>absolut</translation>
    </message>
    <message>
        <source>absolute; at which the rise was read</source>
        <translation>absolut; bei der das Aufschäumen gemessen wurde</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>activation energy</source>
        <translation>Aktivierungsenergie</translation>
    </message>
    <message>
        <source>air left in the mold</source>
        <translation>Luft, die in der Form bleibt</translation>
    </message>
    <message>
        <source>air pocket</source>
        <translation>Lufteinschluss</translation>
    </message>
    <message>
        <source>air pockets</source>
        <translation>Lufteinschlüsse</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>air pressure at sea level</source>
        <translation>Luftdruck auf Meereshöhe</translation>
    </message>
    <message>
        <source>air stays in %1 places</source>
        <translation>an %1 Stellen bleibt Luft</translation>
    </message>
    <message>
        <source>air stays in one place</source>
        <translation>an einer Stelle bleibt Luft</translation>
    </message>
    <message>
        <source>all closures in</source>
        <translation>alle Verschlüsse angezogen</translation>
    </message>
    <message>
        <source>all drawers</source>
        <translation>alle Schubladen</translation>
    </message>
    <message>
        <source>all in</source>
        <translation>alle angezogen</translation>
    </message>
    <message>
        <source>all in after</source>
        <translation>alle angezogen nach</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>zulässig</translation>
    </message>
    <message>
        <source>allowed pull</source>
        <translation>zulässiger Zug</translation>
    </message>
    <message>
        <source>alone until %1</source>
        <translation>allein bis %1</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>and 10 K more, our guess</source>
        <translation>und 10 K mehr, unsere Annahme</translation>
    </message>
    <message>
        <source>area of the insert in the mold</source>
        <translation>Fläche des Einsatzes in der Form</translation>
    </message>
    <message>
        <source>arrives at ×</source>
        <translation>kommt an bei ×</translation>
    </message>
    <message>
        <source>as before the last change</source>
        <translation>noch von vorher</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>laut Aufmaß</translation>
    </message>
    <message>
        <source>as cut</source>
        <translation>wie gesägt</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie erkannt</translation>
    </message>
    <message>
        <source>as high</source>
        <translation>so hoch</translation>
    </message>
    <message>
        <source>as listed with the foam</source>
        <translation>wie beim Schaum aufgeführt</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie gesetzt</translation>
    </message>
    <message>
        <source>as set for the shop</source>
        <translation>wie für die Werkstatt gesetzt</translation>
    </message>
    <message>
        <source>as the sides</source>
        <translation>wie die Seiten</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>wie gewogen</translation>
    </message>
    <message>
        <source>at hand</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>at stiffeners’ ends</source>
        <translation>an Versteifungen</translation>
    </message>
    <message>
        <source>at the feet of the blocks</source>
        <translation>am Fuß der Klötze</translation>
    </message>
    <message>
        <source>at the plate</source>
        <translation>an der Platte</translation>
    </message>
    <message>
        <source>at the shop’s altitude, by ISO 2533</source>
        <translation>in der Höhenlage der Werkstatt, nach ISO 2533</translation>
    </message>
    <message>
        <source>auto</source>
        <translation>auto</translation>
    </message>
    <message>
        <source>auto: %1</source>
        <translation>auto: %1</translation>
    </message>
    <message>
        <source>auto: %1, %2</source>
        <translation>auto: %1, %2</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>auto</translation>
    </message>
    <message>
        <source>automatic overpack</source>
        <translation>automatische Überfüllung</translation>
    </message>
    <message>
        <source>bars: pull at </source>
        <translation>Strichlänge: Zug bei </translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>Ansätze</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Klotz</translation>
    </message>
    <message>
        <source>block </source>
        <translation>Klotz </translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>Klötze</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>board </source>
        <translation>Platte </translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>boards, sheets</source>
        <translation>Platten</translation>
    </message>
    <message>
        <source>board’s stress</source>
        <translation>Spannung der Platte</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>bottom of the drawer, print up;</source>
        <translation>Schubladenboden, Druck nach oben;</translation>
    </message>
    <message>
        <source>bow</source>
        <translation>Durchbiegung</translation>
    </message>
    <message>
        <source>bow </source>
        <translation>Biegung </translation>
    </message>
    <message>
        <source>bow of the underside</source>
        <translation>Durchbiegung der Unterseite</translation>
    </message>
    <message>
        <source>bow of box walls</source>
        <translation>Biegung Kastenwand</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Kasten</translation>
    </message>
    <message>
        <source>build for</source>
        <translation>Bemessungsdruck</translation>
    </message>
    <message>
        <source>butts </source>
        <translation>stößt an </translation>
    </message>
    <message>
        <source>buy</source>
        <translation>kaufen</translation>
    </message>
    <message>
        <source>by mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>by the file</source>
        <translation>nach der Datei</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>nach Etikett</translation>
    </message>
    <message>
        <source>by the photo</source>
        <translation>nach dem Foto</translation>
    </message>
    <message>
        <source>by the rate</source>
        <translation>nach der Rate</translation>
    </message>
    <message>
        <source>by the test cup</source>
        <translation>nach dem Probebecher</translation>
    </message>
    <message>
        <source>by volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>can it be closed</source>
        <translation>lässt sie sich schließen</translation>
    </message>
    <message>
        <source>cast</source>
        <translation>Guss</translation>
    </message>
    <message>
        <source>center x</source>
        <translation>Mitte x</translation>
    </message>
    <message>
        <source>changed by %1</source>
        <translation>geändert durch %1</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>clamp</source>
        <translation>Zwinge</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>Modelliermasse</translation>
    </message>
    <message>
        <source>clay fillet</source>
        <translation>Hohlkehle</translation>
    </message>
    <message>
        <source>clay fillet, sealer&apos;s film</source>
        <translation>Hohlkehle, Film der Versiegelung</translation>
    </message>
    <message>
        <source>clay fillets</source>
        <translation>Hohlkehlen</translation>
    </message>
    <message>
        <source>clay, oil or wax based</source>
        <translation>Modelliermasse, auf Öl- oder Wachsbasis</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed height </source>
        <translation>Höhe geschlossen </translation>
    </message>
    <message>
        <source>closed, kPa</source>
        <translation>geschl., kPa</translation>
    </message>
    <message>
        <source>closures</source>
        <translation>Verschlüsse</translation>
    </message>
    <message>
        <source>closures: thick line tight, dashed needed</source>
        <translation>Verschlüsse: dick angezogen, gestrichelt nötig</translation>
    </message>
    <message>
        <source>cm² × mm in %1</source>
        <translation>cm² × mm in %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>commas</source>
        <translation>Kommas</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>common practice, %1 foam</source>
        <translation>üblich, Schaum %1</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>corrected for </source>
        <translation>korrigiert um </translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>counted from the job</source>
        <translation>aus dem Auftrag gezählt</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>Becher</translation>
    </message>
    <message>
        <source>cup %1</source>
        <translation>Becher %1</translation>
    </message>
    <message>
        <source>cups</source>
        <translation>Becher</translation>
    </message>
    <message>
        <source>cut to</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>cut to h</source>
        <translation>Höhe h</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>day %1, %2</source>
        <translation>Tag %1, %2</translation>
    </message>
    <message>
        <source>decides</source>
        <translation>entscheidet</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>tief</translation>
    </message>
    <message>
        <source>deep, front to back</source>
        <translation>tief, von vorn nach hinten</translation>
    </message>
    <message>
        <source>deeper mold</source>
        <translation>tiefere Form</translation>
    </message>
    <message>
        <source>density of A, of B</source>
        <translation>Dichte von A, von B</translation>
    </message>
    <message>
        <source>density of the mixed parts</source>
        <translation>Dichte der Mischung</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>depth of the mold</source>
        <translation>Tiefe der Form</translation>
    </message>
    <message>
        <source>diameter (%1)</source>
        <translation>Durchmesser (%1)</translation>
    </message>
    <message>
        <source>done in</source>
        <translation>fertig in</translation>
    </message>
    <message>
        <source>dots per inch</source>
        <translation>Punkte pro Zoll</translation>
    </message>
    <message>
        <source>drawer</source>
        <translation>Schublade</translation>
    </message>
    <message>
        <source>drawer %1 of %2</source>
        <translation>Schublade %1 von %2</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>tightening them all</source>
        <translation>alle anziehen</translation>
    </message>
    <message>
        <source>each set</source>
        <translation>je Satz</translation>
    </message>
    <message>
        <source>edge, least</source>
        <translation>Rand, mindestens</translation>
    </message>
    <message>
        <source>edges of base and plate</source>
        <translation>Kanten der Platten</translation>
    </message>
    <message>
        <source>else the outlines are wrong by as much.</source>
        <translation>sonst sind die Umrisse um ebenso viel falsch.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>end grain of blocks</source>
        <translation>Hirnholz der Klötze</translation>
    </message>
    <message>
        <source>enlarged by the shrinkage</source>
        <translation>um den Schwund vergrößert</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>exact, from their outlines</source>
        <translation>genau, aus ihren Umrissen</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>fence at</source>
        <translation>Anschlag</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>figures are estimates: see last page</source>
        <translation>Schätzungen: siehe letzte Seite</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gefüllt</translation>
    </message>
    <message>
        <source>filled at a rise of</source>
        <translation>gefüllt bei Steigfaktor</translation>
    </message>
    <message>
        <source>filler</source>
        <translation>Füllstück</translation>
    </message>
    <message>
        <source>filler from below</source>
        <translation>Füllstück von unten</translation>
    </message>
    <message>
        <source>filler, glued</source>
        <translation>Füllstück, geleimt</translation>
    </message>
    <message>
        <source>filler, traced</source>
        <translation>Füllstück, angerissen</translation>
    </message>
    <message>
        <source>fills last</source>
        <translation>füllt sich zuletzt</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>fixed by you</source>
        <translation>von Hand festgelegt</translation>
    </message>
    <message>
        <source>floor, least</source>
        <translation>Boden, mindestens</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>foam does not flow for nothing; our guess</source>
        <translation>Schaum fließt nicht umsonst; unsere Annahme</translation>
    </message>
    <message>
        <source>foam mixed</source>
        <translation>Schaum gemischt</translation>
    </message>
    <message>
        <source>foam&apos;s label, as entered</source>
        <translation>Etikett, wie eingegeben</translation>
    </message>
    <message>
        <source>foot edge</source>
        <translation>Fußkante</translation>
    </message>
    <message>
        <source>foot of the wall</source>
        <translation>Fuß der Wand</translation>
    </message>
    <message>
        <source>foot screws %1</source>
        <translation>Fußschrauben %1</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>from above</source>
        <translation>von oben</translation>
    </message>
    <message>
        <source>from its floor</source>
        <translation>ab seinem Boden</translation>
    </message>
    <message>
        <source>from the levels</source>
        <translation>aus den Stufen</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>front edge</source>
        <translation>vordere Kante</translation>
    </message>
    <message>
        <source>front, back</source>
        <translation>vorn, hinten</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>full rise</source>
        <translation>ganz aufgeschäumt</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>g/mL</source>
        <translation>g/mL</translation>
    </message>
    <message>
        <source>gap </source>
        <translation>Spalt </translation>
    </message>
    <message>
        <source>gap under it</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>gas constant</source>
        <translation>Gaskonstante</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>Handschuhe</translation>
    </message>
    <message>
        <source>glue: too low to screw</source>
        <translation>Leim: zu niedrig</translation>
    </message>
    <message>
        <source>glue: too slim to screw</source>
        <translation>Leim: zu schmal</translation>
    </message>
    <message>
        <source>grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>half %1 on %2</source>
        <translation>halbes %1 auf %2</translation>
    </message>
    <message>
        <source>half tube</source>
        <translation>halbes Rohr</translation>
    </message>
    <message>
        <source>hard</source>
        <translation>hart</translation>
    </message>
    <message>
        <source>hard over %1</source>
        <translation>zu hart über %1</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>height, %1</source>
        <translation>Höhe, %1</translation>
    </message>
    <message>
        <source>high</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>high end fills</source>
        <translation>oben füllt</translation>
    </message>
    <message>
        <source>high end, hotter still</source>
        <translation>oberes Ende, noch heißer</translation>
    </message>
    <message>
        <source>holds, mL</source>
        <translation>fasst, mL</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>hotter in the mold</source>
        <translation>heißer in der Form</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>how full</source>
        <translation>wie voll</translation>
    </message>
    <message>
        <source>how it comes about</source>
        <translation>wie es entsteht</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in the channels between the blocks</source>
        <translation>in den Kanälen zwischen den Klötzen</translation>
    </message>
    <message>
        <source>in the kits</source>
        <translation>in den Gebinden</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>rechtzeitig</translation>
    </message>
    <message>
        <source>in when the mold is full</source>
        <translation>angezogen bei voller Form</translation>
    </message>
    <message>
        <source>in/32</source>
        <translation>in/32</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>insert </source>
        <translation>Einsatz </translation>
    </message>
    <message>
        <source>insert weighs</source>
        <translation>Einsatz wiegt</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>inside </source>
        <translation>innen </translation>
    </message>
    <message>
        <source>for each batch, scale to zero before each</source>
        <translation>für jeden Ansatz, jedes Mal Waage auf null</translation>
    </message>
    <message>
        <source>into the mold</source>
        <translation>in die Form</translation>
    </message>
    <message>
        <source>in³ in %1</source>
        <translation>in³ in %1</translation>
    </message>
    <message>
        <source>its density</source>
        <translation>dessen Dichte</translation>
    </message>
    <message>
        <source>its liquid’s density over its foam’s</source>
        <translation>Dichte der Flüssigkeit durch Dichte des Schaums</translation>
    </message>
    <message>
        <source>its parts</source>
        <translation>davon Teile</translation>
    </message>
    <message>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>job&apos;s</source>
        <translation>des Auftrags</translation>
    </message>
    <message>
        <source>joins </source>
        <translation>stößt an </translation>
    </message>
    <message>
        <source>joint screws</source>
        <translation>Eckschrauben</translation>
    </message>
    <message>
        <source>joint seal, base, walls, fillers, feet</source>
        <translation>Fugendichtung, Grundplatte, Wände, Füllstücke, Füße</translation>
    </message>
    <message>
        <source>keeps %1</source>
        <translation>behält %1</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>kits</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>label; rise by the test cup</source>
        <translation>Etikett; Aufschäumen nach Probebecher</translation>
    </message>
    <message>
        <source>laid on, fits</source>
        <translation>aufgelegt, passt</translation>
    </message>
    <message>
        <source>butted corners</source>
        <translation>stumpf gestoßene Ecken</translation>
    </message>
    <message>
        <source>butted: two walls run through</source>
        <translation>stumpf gestoßen: Zwei Wände laufen durch</translation>
    </message>
    <message>
        <source>late by</source>
        <translation>zu spät um</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left as is</source>
        <translation>hingenommen</translation>
    </message>
    <message>
        <source>left edge</source>
        <translation>linke Kante</translation>
    </message>
    <message>
        <source>left in a bucket</source>
        <translation>Rest im Eimer</translation>
    </message>
    <message>
        <source>left in each bucket</source>
        <translation>Rest je Eimer</translation>
    </message>
    <message>
        <source>left in the bucket</source>
        <translation>Rest im Eimer</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>bleibt übrig</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length (%1)</source>
        <translation>Länge (%1)</translation>
    </message>
    <message>
        <source>length × width × height</source>
        <translation>Länge × Breite × Höhe</translation>
    </message>
    <message>
        <source>level of the liquid</source>
        <translation>Stand der Flüssigkeit</translation>
    </message>
    <message>
        <source>force on the plate</source>
        <translation>Kraft auf die Druckplatte</translation>
    </message>
    <message>
        <source>lift, in</source>
        <translation>Abheben, in</translation>
    </message>
    <message>
        <source>lift, mm</source>
        <translation>Abheben, mm</translation>
    </message>
    <message>
        <source>liquid in the cup</source>
        <translation>flüssig im Becher</translation>
    </message>
    <message>
        <source>liquid stands </source>
        <translation>flüssig steht es </translation>
    </message>
    <message>
        <source>locked</source>
        <translation>festgehalten</translation>
    </message>
    <message>
        <source>low</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>low end fills</source>
        <translation>unten füllt</translation>
    </message>
    <message>
        <source>made as</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Zuschlag</translation>
    </message>
    <message>
        <source>markup</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>mean of %1 test cups</source>
        <translation>Mittel von %1 Probebechern</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>middle of the side</source>
        <translation>Mitte der Seite</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>mix %1, pour %2 a batch</source>
        <translation>je Ansatz %1 mischen, %2 gießen</translation>
    </message>
    <message>
        <source>mix, pot life, rise</source>
        <translation>Mischen, Topfzeit, Aufschäumen</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>mixed and poured</source>
        <translation>gemischt und gegossen</translation>
    </message>
    <message>
        <source>mixed for all drawers</source>
        <translation>gemischt für alle Schubladen</translation>
    </message>
    <message>
        <source>mixed for it</source>
        <translation>dafür gemischt</translation>
    </message>
    <message>
        <source>mixing</source>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mold</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>mold full</source>
        <translation>Form voll</translation>
    </message>
    <message>
        <source>mold holds</source>
        <translation>Form fasst</translation>
    </message>
    <message>
        <source>mold hotter than the parts by</source>
        <translation>Form heißer als Komponenten um</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>next best</source>
        <translation>nächstbeste</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no air pocket keeps its air</source>
        <translation>kein Lufteinschluss behält seine Luft</translation>
    </message>
    <message>
        <source>no air pocket</source>
        <translation>kein Lufteinschluss</translation>
    </message>
    <message>
        <source>all vented</source>
        <translation>alle entlüftet</translation>
    </message>
    <message>
        <source>no flash: a shadow with a sharp edge counts as object.</source>
        <translation>kein Blitz: Ein scharfer Schatten zählt als Gegenstand.</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>ohne Grenze</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>no printer correction</source>
        <translation>ohne Druckerkorrektur</translation>
    </message>
    <message>
        <source>no stiffener</source>
        <translation>keine Versteifung</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none rests on it</source>
        <translation>keine ruht darauf</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message numerus="yes">
        <source>not yet: %n to mend</source>
        <translation>
            <numerusform>noch nicht: %n zu beheben</numerusform>
            <numerusform>noch nicht: %n zu beheben</numerusform>
        </translation>
    </message>
    <message>
        <source>notch apart</source>
        <translation>Mulde getrennt</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>notes: %1</source>
        <translation>Hinweise: %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>nichts gewählt</translation>
    </message>
    <message>
        <source>nothing to buy</source>
        <translation>nichts zu kaufen</translation>
    </message>
    <message>
        <source>number over people closing, times the seconds each takes</source>
        <translation>Anzahl durch Leute, die schließen, mal Sekunden je Verschluss</translation>
    </message>
    <message>
        <source>object</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>object, size in inches</source>
        <translation>Größe in Zoll</translation>
    </message>
    <message>
        <source>object, size in mm</source>
        <translation>Größe in mm</translation>
    </message>
    <message>
        <source>obstructed</source>
        <translation>versperrt</translation>
    </message>
    <message>
        <source>of</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>of </source>
        <translation>von </translation>
    </message>
    <message>
        <source>of both parts by their ratio</source>
        <translation>aus beiden Komponenten nach Verhältnis</translation>
    </message>
    <message>
        <source>of part B</source>
        <translation>von Komponente B</translation>
    </message>
    <message>
        <source>of the board or piece in the shop’s list</source>
        <translation>der Platte oder des Kantholzes in der Liste der Werkstatt</translation>
    </message>
    <message>
        <source>of the overpack: the most that may leave through the vents</source>
        <translation>der Überfüllung: das meiste, was durch die Entlüftungslöcher gehen darf</translation>
    </message>
    <message>
        <source>of the ratio by volume, by the label</source>
        <translation>des Verhältnisses nach Volumen, nach Etikett</translation>
    </message>
    <message>
        <source>of the units</source>
        <translation>der Einheiten</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
    <message>
        <source>on these holes</source>
        <translation>auf diesen Löchern</translation>
    </message>
    <message>
        <source>one air pocket keeps its air, %1</source>
        <translation>ein Lufteinschluss behält seine Luft, %1</translation>
    </message>
    <message>
        <source>one person</source>
        <translation>eine Person</translation>
    </message>
    <message>
        <source>one set</source>
        <translation>ein Satz</translation>
    </message>
    <message>
        <source>only %1 of wood beside it</source>
        <translation>nur %1 Holz daneben</translation>
    </message>
    <message>
        <source>open after </source>
        <translation>öffnen nach </translation>
    </message>
    <message>
        <source>or by volume</source>
        <translation>oder nach Volumen</translation>
    </message>
    <message>
        <source>our guess</source>
        <translation>unsere Annahme</translation>
    </message>
    <message>
        <source>our guess after a test cup</source>
        <translation>unsere Annahme nach einem Probebecher</translation>
    </message>
    <message>
        <source>our guess by the label; a test cup narrows it</source>
        <translation>unsere Annahme nach Etikett; ein Probebecher verengt sie</translation>
    </message>
    <message>
        <source>our guess unless measured</source>
        <translation>unsere Annahme, wenn nicht gemessen</translation>
    </message>
    <message>
        <source>out of the vents</source>
        <translation>aus den Entlüftungslöchern</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>over %1, to %2</source>
        <translation>über %1, bis %2</translation>
    </message>
    <message>
        <source>over its limit</source>
        <translation>über der Grenze</translation>
    </message>
    <message>
        <source>over its limit: %1 %</source>
        <translation>über der Grenze: %1 %</translation>
    </message>
    <message>
        <source>overpack</source>
        <translation>Überfüllung</translation>
    </message>
    <message>
        <source>o’clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>part A</source>
        <translation>Komp. A</translation>
    </message>
    <message>
        <source>part B</source>
        <translation>Komp. B</translation>
    </message>
    <message>
        <source>parts A</source>
        <translation>Teile A</translation>
    </message>
    <message>
        <source>parts B</source>
        <translation>Teile B</translation>
    </message>
    <message>
        <source>not on by %1: leave it off</source>
        <translation>nicht bis %1 aufgelegt: weglassen</translation>
    </message>
    <message>
        <source>not on by %1: leave it off, let the foam rise open</source>
        <translation>nicht aufgelegt bis %1: weglassen, den Schaum offen steigen lassen</translation>
    </message>
    <message>
        <source>pigment</source>
        <translation>Pigment</translation>
    </message>
    <message>
        <source>pigment on top: </source>
        <translation>Pigment obendrauf: </translation>
    </message>
    <message>
        <source>pigment share</source>
        <translation>Anteil Pigment</translation>
    </message>
    <message>
        <source>pilot in wall</source>
        <translation>in Wand</translation>
    </message>
    <message>
        <source>pinwheel corners</source>
        <translation>umlaufend gestoßene Ecken</translation>
    </message>
    <message>
        <source>pinwheel: each wall runs past the next</source>
        <translation>umlaufend gestoßen: Jede Wand läuft an der nächsten vorbei</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>platziert</translation>
    </message>
    <message>
        <source>planed round</source>
        <translation>rund gehobelt</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>plate on</source>
        <translation>Druckplatte aufgelegt</translation>
    </message>
    <message>
        <source>plate on</source>
        <comment>a moment of the pour</comment>
        <translation>Platte aufgelegt</translation>
    </message>
    <message>
        <source>plate on by</source>
        <translation>aufgelegt bis</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation>Aussparung</translation>
    </message>
    <message>
        <source>pocket depth</source>
        <translation>Taschentiefe</translation>
    </message>
    <message>
        <source>pockets wider by</source>
        <translation>Aussparungen breiter um</translation>
    </message>
    <message>
        <source>pot life</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>pot life by the label</source>
        <translation>Topfzeit nach Etikett</translation>
    </message>
    <message>
        <source>pot life today</source>
        <translation>Topfzeit heute</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>Guss</translation>
    </message>
    <message>
        <source>pour, mL</source>
        <translation>gießen, mL</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>poured in pot life</source>
        <translation>in der Topfzeit gegossen</translation>
    </message>
    <message>
        <source>poured with its reserve</source>
        <translation>gegossen mit Reserve</translation>
    </message>
    <message>
        <source>pouring</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>pouring, each</source>
        <translation>Gießen, je</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>pressure held, kPa</source>
        <translation>gehaltener Druck, kPa</translation>
    </message>
    <message>
        <source>pressure held, psi</source>
        <translation>gehaltener Druck, psi</translation>
    </message>
    <message>
        <source>pressure that is held</source>
        <translation>gehaltener Druck</translation>
    </message>
    <message>
        <source>pressure to build for</source>
        <translation>Bemessungsdruck</translation>
    </message>
    <message>
        <source>pressure to build for, at least</source>
        <translation>Bemessungsdruck, mindestens</translation>
    </message>
    <message>
        <source>pressure when closed</source>
        <translation>Druck geschlossen</translation>
    </message>
    <message>
        <source>pressure, kPa: expected; dashed: to build for</source>
        <translation>Druck, kPa: erwartet; gestrichelt: Bemessung</translation>
    </message>
    <message>
        <source>pressure, psi: expected; dashed: to build for</source>
        <translation>Druck, psi: erwartet; gestrichelt: Bemessung</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price of each set</source>
        <translation>Preis je Satz</translation>
    </message>
    <message>
        <source>price, %1</source>
        <translation>Preis, %1</translation>
    </message>
    <message>
        <source>qt/s</source>
        <translation>qt/s</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>ratio A : B by volume</source>
        <translation>Verhältnis A : B nach Volumen</translation>
    </message>
    <message>
        <source>reaches plate</source>
        <translation>erreicht Platte</translation>
    </message>
    <message>
        <source>read as</source>
        <translation>gelesen als</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>refused: see the checks</source>
        <translation>abgelehnt: siehe Prüfungen</translation>
    </message>
    <message>
        <source>release</source>
        <translation>Trennm.</translation>
    </message>
    <message>
        <source>release, 2 coats</source>
        <translation>Trennmittel, 2 Anstriche</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>rev. %1 · %2</source>
        <translation>Rev. %1 · %2</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>Steigfaktor</translation>
    </message>
    <message>
        <source>rise at sea level</source>
        <translation>Steigfaktor auf Meereshöhe</translation>
    </message>
    <message>
        <source>rise at the high end</source>
        <translation>Steigfaktor am oberen Ende</translation>
    </message>
    <message>
        <source>rise at the low end</source>
        <translation>Steigfaktor am unteren Ende</translation>
    </message>
    <message>
        <source>rise here</source>
        <translation>Steigfaktor hier</translation>
    </message>
    <message>
        <source>rise in the cup, here</source>
        <translation>Steigfaktor des Bechers, hier</translation>
    </message>
    <message>
        <source>rise in the cups, here</source>
        <translation>Steigfaktor der Becher, hier</translation>
    </message>
    <message>
        <source>rise may be off by</source>
        <translation>Steigfaktor kann abweichen um</translation>
    </message>
    <message>
        <source>rise ×%1, %2</source>
        <translation>Steigfaktor ×%1, %2</translation>
    </message>
    <message>
        <source>rise, free, at this altitude</source>
        <translation>Steigfaktor, frei, in dieser Höhenlage</translation>
    </message>
    <message>
        <source>rise, times the liquid</source>
        <translation>Aufschäumen, Vielfaches der Flüssigkeit</translation>
    </message>
    <message>
        <source>risen</source>
        <translation>gestiegen</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>run of %1</source>
        <translation>Serie von %1</translation>
    </message>
    <message>
        <source>runs into a stiffener</source>
        <translation>stößt auf eine Versteifung</translation>
    </message>
    <message>
        <source>its modulus of rupture</source>
        <translation>Biegefestigkeit davon</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>saw off %1</source>
        <translation>%1 absägen</translation>
    </message>
    <message>
        <source>sawn round</source>
        <translation>rund gesägt</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>%1 into the bucket</source>
        <translation>%1 in den Eimer</translation>
    </message>
    <message>
        <source>free side, %1</source>
        <translation>freie Seite, %1</translation>
    </message>
    <message>
        <source>Free side: too narrow to push between fence and blade. Set the fence for the rest of a wider piece, so that the narrow one falls off the free side of the blade.</source>
        <translation>Freie Seite: zu schmal, um es zwischen Anschlag und Sägeblatt zu schieben. Den Anschlag für den Rest eines breiteren Stücks einstellen, sodass das schmale auf der freien Seite des Blatts abfällt.</translation>
    </message>
    <message>
        <source>%1 in a cup of its own</source>
        <translation>%1 in eigenem Becher</translation>
    </message>
    <message>
        <source>screw 1 x</source>
        <translation>Schr. 1 x</translation>
    </message>
    <message>
        <source>screw 2 x</source>
        <translation>Schr. 2 x</translation>
    </message>
    <message>
        <source>screw holes</source>
        <translation>Schraublöcher</translation>
    </message>
    <message>
        <source>screws</source>
        <translation>Schrauben</translation>
    </message>
    <message>
        <source>screws </source>
        <translation>Schrauben </translation>
    </message>
    <message>
        <source>screws do not fit</source>
        <translation>Schrauben passen nicht</translation>
    </message>
    <message>
        <source>sealer, 3 coats, 2 more on raw edges</source>
        <translation>Versiegelung, 3 Anstriche, 2 mehr auf rohen Kanten</translation>
    </message>
    <message>
        <source>seconds from the start of mixing</source>
        <translation>Sekunden ab Mischbeginn</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>Semikolons</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <source>set in the job</source>
        <translation>im Auftrag gesetzt</translation>
    </message>
    <message>
        <source>sets in a run</source>
        <translation>Sätze je Serie</translation>
    </message>
    <message>
        <source>sets in the run, one mold for all</source>
        <translation>Sätze in der Serie, eine Form für alle</translation>
    </message>
    <message>
        <source>setting the plate</source>
        <translation>Druckplatte auflegen</translation>
    </message>
    <message>
        <source>severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>shallower mold</source>
        <translation>flachere Form</translation>
    </message>
    <message>
        <source>share of the overpack</source>
        <translation>Anteil der Überfüllung</translation>
    </message>
    <message>
        <source>share of the rise that is done</source>
        <translation>Anteil des Aufschäumens, der geschehen ist</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>shop days until ready</source>
        <translation>Werktage bis fertig</translation>
    </message>
    <message>
        <source>short under %1</source>
        <translation>zu wenig unter %1</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>Schwund</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>snap</source>
        <translation>einrasten</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>solvent for tools</source>
        <translation>Lösemittel für Werkzeug</translation>
    </message>
    <message>
        <source>squeeze-out</source>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>squeeze-out, fl oz</source>
        <translation>Austritt, fl oz</translation>
    </message>
    <message>
        <source>squeeze-out, mL</source>
        <translation>Austritt, mL</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>stands on </source>
        <translation>steht auf </translation>
    </message>
    <message>
        <source>stiffener </source>
        <translation>Versteifung </translation>
    </message>
    <message>
        <source>stiffeners</source>
        <translation>Versteifungen</translation>
    </message>
    <message>
        <source>stiffeners’ stress</source>
        <translation>Spannung Versteifung</translation>
    </message>
    <message>
        <source>strap</source>
        <translation>Gurt</translation>
    </message>
    <message>
        <source>strip: </source>
        <translation>Streifen: </translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>Tabs</translation>
    </message>
    <message>
        <source>temperature of shop and parts</source>
        <translation>Temperatur von Werkstatt und Komponenten</translation>
    </message>
    <message>
        <source>temperature of the label</source>
        <translation>Temperatur des Etiketts</translation>
    </message>
    <message>
        <source>temperature of the rise</source>
        <translation>Temperatur des Aufschäumens</translation>
    </message>
    <message>
        <source>test cup</source>
        <translation>Probebecher</translation>
    </message>
    <message>
        <source>that much more is mixed; our guess</source>
        <translation>so viel mehr wird gemischt; unsere Annahme</translation>
    </message>
    <message>
        <source>the insert is cast FACE DOWN on it</source>
        <translation>Einsatz darauf: OBERSEITE NACH UNTEN</translation>
    </message>
    <message>
        <source>the insert will lie FACE UP</source>
        <translation>Einsatz dann: OBERSEITE NACH OBEN</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>der Auftrag</translation>
    </message>
    <message>
        <source>the long side of the plate</source>
        <translation>die lange Seite der Druckplatte</translation>
    </message>
    <message>
        <source>the other face lies on the foam</source>
        <translation>die andere Seite liegt auf dem Schaum</translation>
    </message>
    <message>
        <source>the pocket grows by %1 %</source>
        <translation>die Aussparung wächst um %1 %</translation>
    </message>
    <message>
        <source>the pockets on the drawer plan</source>
        <translation>die Aussparungen auf dem Schubladenplan</translation>
    </message>
    <message>
        <source>the gauge in the Foam pane</source>
        <translation>die Skala im Bereich Schaum</translation>
    </message>
    <message>
        <source>the scale shows</source>
        <translation>die Waage zeigt</translation>
    </message>
    <message>
        <source>the short side of the plate</source>
        <translation>die kurze Seite der Druckplatte</translation>
    </message>
    <message>
        <source>the whole sheet sharp in the photo. Even light,</source>
        <translation>das ganze Blatt scharf im Foto. Gleichmäßiges Licht,</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>then crosscut</source>
        <translation>dann ablängen</translation>
    </message>
    <message>
        <source>then: %1</source>
        <translation>dann: %1</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thickness of the insert, enlarged by the shrinkage</source>
        <translation>Dicke des Einsatzes, um den Schwund vergrößert</translation>
    </message>
    <message>
        <source>this side UP</source>
        <translation>diese Seite OBEN</translation>
    </message>
    <message>
        <source>through</source>
        <translation>durch</translation>
    </message>
    <message>
        <source>through plate</source>
        <translation>in Druckplatte</translation>
    </message>
    <message>
        <source>times its level</source>
        <translation>mal seinem Stand</translation>
    </message>
    <message>
        <source>times its volume</source>
        <translation>mal seinem Volumen</translation>
    </message>
    <message>
        <source>times the liquid; dashed: by the label</source>
        <translation>Vielfaches der Flüssigkeit; gestrichelt: Etikett</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>to build for</source>
        <translation>Bemessungsdruck</translation>
    </message>
    <message>
        <source>to pour</source>
        <translation>zu gießen</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>today, by the label and the temperature</source>
        <translation>heute, nach Etikett und Temperatur</translation>
    </message>
    <message>
        <source>together</source>
        <translation>zusammen</translation>
    </message>
    <message>
        <source>together, foam apart</source>
        <translation>zusammen, ohne Schaum</translation>
    </message>
    <message>
        <source>too late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>top edge, pilot holes of %1 for the plate’s closures</source>
        <translation>Oberkante, Vorbohrungen von %1 für die Verschlüsse der Druckplatte</translation>
    </message>
    <message>
        <source>top face of the pattern board, print up;</source>
        <translation>Oberseite der Musterplatte, Druck nach oben;</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>beschn.</translation>
    </message>
    <message>
        <source>tube with discs</source>
        <translation>Rohr mit Scheiben</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>Dreh.</translation>
    </message>
    <message>
        <source>turn (°)</source>
        <translation>Drehung (°)</translation>
    </message>
    <message>
        <source>turned %1°</source>
        <translation>gedreht %1°</translation>
    </message>
    <message>
        <source>twice as fast by</source>
        <translation>doppelt so schnell je</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>usual overpack</source>
        <translation>übliche Überfüllung</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>vent holes</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>vent, </source>
        <translation>Entlüftungsloch, </translation>
    </message>
    <message>
        <source>vents</source>
        <translation>Entlüftungslöcher</translation>
    </message>
    <message>
        <source>vents; lines by drill in inches</source>
        <translation>Löcher; Linien nach Bohrer in Zoll</translation>
    </message>
    <message>
        <source>vents; lines by drill in mm</source>
        <translation>Löcher; Linien nach Bohrer in mm</translation>
    </message>
    <message>
        <source>volume in lengths</source>
        <translation>Volumen in Längen</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>wall between pockets, least</source>
        <translation>Steg zwischen Aussparungen, mindestens</translation>
    </message>
    <message>
        <source>box wall tops</source>
        <translation>Kastenoberkanten</translation>
    </message>
    <message>
        <source>walls and base</source>
        <translation>Wände und Grundplatte</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>what is poured over how fast</source>
        <translation>was gegossen wird, durch die Rate</translation>
    </message>
    <message>
        <source>what one holds, on average</source>
        <translation>was einer im Mittel hält</translation>
    </message>
    <message>
        <source>what the container takes</source>
        <translation>was das Mischgefäß nimmt</translation>
    </message>
    <message>
        <source>what the mixer takes</source>
        <translation>was der Mischer nimmt</translation>
    </message>
    <message>
        <source>what the mold holds</source>
        <translation>was die Form fasst</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>was zu tun ist</translation>
    </message>
    <message>
        <source>when closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>when closed, by its mass</source>
        <translation>geschlossen, nach Masse</translation>
    </message>
    <message>
        <source>where from</source>
        <translation>woher</translation>
    </message>
    <message>
        <source>what it concerns</source>
        <translation>betrifft</translation>
    </message>
    <message>
        <source>wide</source>
        <translation>breit</translation>
    </message>
    <message>
        <source>wider, %1</source>
        <translation>breiter, %1</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>with room to stir</source>
        <translation>mit Raum zum Rühren</translation>
    </message>
    <message>
        <source>with the plan’s dose, kPa</source>
        <translation>mit geplanter Dosis, kPa</translation>
    </message>
    <message>
        <source>with what stays behind</source>
        <translation>mit dem, was zurückbleibt</translation>
    </message>
    <message>
        <source>without the fillers</source>
        <translation>ohne die Füllstücke</translation>
    </message>
    <message>
        <source>wood glue between layers</source>
        <translation>Holzleim zwischen den Schichten</translation>
    </message>
    <message>
        <source>work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>working it out…</source>
        <translation>rechnet…</translation>
    </message>
    <message>
        <source>worst closure</source>
        <translation>größte Zugkraft</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>x %1   y %2</source>
        <translation>x %1   y %2</translation>
    </message>
    <message>
        <source>x (%1)</source>
        <translation>x (%1)</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <source>y (%1)</source>
        <translation>y (%1)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>± 10 % by the label, ± 4 % after a test cup, and 0.5 mm: our guess.</source>
        <translation>± 10 % nach Etikett, ± 4 % nach einem Probebecher, und 0,5 mm: unsere Annahme.</translation>
    </message>
    <message>
        <source>×%1 to ×%2</source>
        <translation>×%1 bis ×%2</translation>
    </message>
    <message>
        <source>“%1” and its pockets (%2) go. You can undo it.</source>
        <translation>„%1“ und seine Aussparungen (%2) verschwinden. Lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>“%1” and its pockets (%2) go; the objects stay in the list. You can undo it.</source>
        <translation>„%1“ und ihre Aussparungen (%2) verschwinden; die Gegenstände bleiben in der Liste. Lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>“%1” can’t be opened</source>
        <translation>„%1“ lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>„%1“ hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>“%1” has no height yet</source>
        <translation>„%1“ hat noch keine Höhe</translation>
    </message>
    <message>
        <source>“%1” has nothing to act on just now.</source>
        <translation>„%1“ hat gerade nichts zu bearbeiten.</translation>
    </message>
    <message>
        <source>“%1” is in the list: drag it onto the drawer, or press Ctrl+Enter. Ctrl+R places all.</source>
        <translation>„%1“ ist in der Liste: auf die Schublade ziehen oder Strg+Eingabe. Strg+R platziert alle.</translation>
    </message>
    <message>
        <source>“%1” is no longer on disk; saving writes it again.</source>
        <translation>„%1“ ist nicht mehr auf dem Datenträger; Speichern schreibt es neu.</translation>
    </message>
    <message>
        <source>“%1” is not in the guide</source>
        <translation>„%1“ steht nicht im Handbuch</translation>
    </message>
    <message>
        <source>“%1” is open in another window of this program. Open a copy of what is saved? Saving the copy asks for a name.</source>
        <translation>„%1“ ist in einem anderen Fenster dieses Programms offen. Eine Kopie des Gespeicherten öffnen? Beim Speichern der Kopie wird nach einem Namen gefragt.</translation>
    </message>
    <message>
        <source>“%1” is open in another window of this program. Write over it all the same?</source>
        <translation>„%1“ ist in einem anderen Fenster dieses Programms offen. Trotzdem überschreiben?</translation>
    </message>
    <message>
        <source>“%1” is open in another window of this program: this is a copy without a name yet.</source>
        <translation>„%1“ ist in einem anderen Fenster dieses Programms geöffnet: Das hier ist eine Kopie, noch ohne Namen.</translation>
    </message>
    <message>
        <source>“%1” was changed by another program and can’t be read now; the job here is whole.</source>
        <translation>„%1“ wurde von einem anderen Programm geändert und ist nicht lesbar; der Auftrag hier ist ganz.</translation>
    </message>
    <message>
        <source>“%1” was changed by another program. Open that version?</source>
        <translation>„%1“ wurde von einem anderen Programm geändert. Diese Fassung öffnen?</translation>
    </message>
    <message>
        <source>“%1” was changed by another program. Open that version? The changes made here since the last save would be lost.</source>
        <translation>„%1“ wurde von einem anderen Programm geändert. Diese Fassung öffnen? Hier seit dem letzten Speichern Geändertes ginge verloren.</translation>
    </message>
    <message>
        <source>“%1” was open when the program ended. %2
Take it up again?</source>
        <translation>„%1“ war offen, als das Programm endete. %2
Wieder aufnehmen?</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… und %1 weitere</translation>
    </message>
    <message>
        <source>Check height and distance</source>
        <translation>Höhe und Abstand prüfen</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Eine andere Datei wählen</translation>
    </message>
    <message>
        <source>Choose its shape anew</source>
        <translation>Seine Form neu wählen</translation>
    </message>
    <message>
        <source>See what its queue says</source>
        <translation>In der Druckerwarteschlange nachsehen</translation>
    </message>
    <message>
        <source>Switch it on, or write a PDF</source>
        <translation>Einschalten oder ein PDF schreiben</translation>
    </message>
    <message>
        <source>the object is nearly as high as the camera was</source>
        <translation>der Gegenstand ist fast so hoch wie die Kamera</translation>
    </message>
    <message>
        <source>the printer took no pages</source>
        <translation>der Drucker nahm keine Seiten an</translation>
    </message>
    <message>
        <source>there is no such printer now</source>
        <translation>diesen Drucker gibt es gerade nicht</translation>
    </message>
    <message>
        <source>this outline has no such shape any more</source>
        <translation>dieser Umriss hat diese Form nicht mehr</translation>
    </message>
    <message>
        <source>%1 of %2 marked done. Space marks a row. Bold can’t wait.</source>
        <translation>%1 von %2 abgehakt. Die Leertaste hakt eine Zeile ab. Fettes kann nicht warten.</translation>
    </message>
    <message>
        <source>%1, but nothing on them.</source>
        <translation>%1, aber nichts, was darauf steht.</translation>
    </message>
    <message>
        <source>%1. Print again the templates of: %2.</source>
        <translation>%1. Schablonen neu drucken für: %2.</translation>
    </message>
    <message>
        <source>Run s&amp;heet</source>
        <translation>Ab&amp;laufblatt</translation>
    </message>
    <message>
        <source>Can’t wait without making the whole job later</source>
        <translation>Kann nicht warten, ohne den ganzen Auftrag zu verspäten</translation>
    </message>
    <message>
        <source>Changed since the templates of rev. %1 were printed</source>
        <translation>Geändert, seit die Schablonen der Rev. %1 gedruckt wurden</translation>
    </message>
    <message>
        <source>For the next cast. Undo brings them back.</source>
        <translation>Für den nächsten Guss. Rückgängig bringt sie wieder.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Nothing to do yet: it needs a mold and a dose.</source>
        <translation>Noch nichts zu tun: Es braucht eine Form und eine Dosis.</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Ablauf</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufblatt</translation>
    </message>
    <message>
        <source>Shop’s days</source>
        <translation>Tage der Werkstatt</translation>
    </message>
    <message>
        <source>Take all marks back</source>
        <translation>Alle Haken zurücknehmen</translation>
    </message>
    <message>
        <source>Take the mark of “%1” back</source>
        <translation>Haken bei „%1“ zurücknehmen</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>There is nothing to do yet: it needs a mold and a dose.</source>
        <translation>Es gibt noch nichts zu tun: Es braucht eine Form und eine Dosis.</translation>
    </message>
    <message>
        <source>Mark “%1”</source>
        <translation>„%1“ abhaken</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>What is done when</source>
        <translation>Was wann getan wird</translation>
    </message>
    <message>
        <source>What is done when, for all drawers: dark while hands are on, open while it is left alone, black where it can’t wait; a flag stands before what has conditions</source>
        <translation>Was wann getan wird, für alle Schubladen: dunkel, solange Hände daran sind, offen, solange es ruht, schwarz, wo es nicht warten kann; eine Fahne steht vor dem, was erst nach Bedingungen beginnt</translation>
    </message>
    <message>
        <source>at hand: %1</source>
        <translation>zur Hand: %1</translation>
    </message>
    <message>
        <source>first: %1</source>
        <translation>zuerst: %1</translation>
    </message>
    <message>
        <source>Dark: hands on; open: left alone; black with wide edges: can't wait; a flag: conditions come first, an open one once all are met. Bands are the hours the shop is closed.</source>
        <translation>Dunkel: Hand anlegen; offen: ruht; schwarz mit breiten Rändern: darf nicht warten; eine Fahne: erst die Bedingungen; offen, wenn alle erfüllt sind. Bänder sind die Stunden, in denen die Werkstatt geschlossen ist.</translation>
    </message>
    <message>
        <source>Labels  ·  %1, %2  ·  %3  ·  page %4 of %5</source>
        <translation>Etiketten  ·  %1, %2  ·  %3  ·  Seite %4 von %5</translation>
    </message>
    <message>
        <source>Wall strips  ·  1 : 1, print without scaling and measure the scale  ·  %1, %2  ·  %3  ·  page %4 of %5</source>
        <translation>Wandstreifen  ·  1 : 1, ohne Skalierung drucken und den Maßstab nachmessen  ·  %1, %2  ·  %3  ·  Seite %4 von %5</translation>
    </message>
    <message>
        <source>wall %1, needs %2</source>
        <translation>Steg %1, nötig %2</translation>
    </message>
    <message>
        <source>edge %1, needs %2</source>
        <translation>Rand %1, nötig %2</translation>
    </message>
    <message>
        <source>floor %1, needs %2</source>
        <translation>Boden %1, nötig %2</translation>
    </message>
    <message>
        <source>overlap %1</source>
        <translation>Überlappung %1</translation>
    </message>
    <message>
        <source>outside by %1</source>
        <translation>außerhalb um %1</translation>
    </message>
    <message>
        <source>needs %1, has %2</source>
        <translation>nötig %1, hat %2</translation>
    </message>
    <message>
        <source>%1 to note</source>
        <translation>Hinweise: %1</translation>
    </message>
    <message>
        <source>%1: past %2 s from the start of mixing the plate stays off.</source>
        <translation>%1: Nach %2 s ab Mischbeginn die Druckplatte nicht mehr auflegen.</translation>
    </message>
    <message>
        <source>&amp;Dry run with a stopwatch</source>
        <translation>P&amp;robelauf mit Stoppuhr</translation>
    </message>
    <message>
        <source>&amp;Tidy, and what changes</source>
        <translation>Auf&amp;räumen, und was sich ändert</translation>
    </message>
    <message>
        <source>A pour of this drawer is going on. A dry run hides its clock and its next step. Begin it all the same?</source>
        <translation>Ein Guss dieser Schublade läuft. Ein Probelauf verdeckt seine Uhr und den nächsten Schritt. Trotzdem proben?</translation>
    </message>
    <message>
        <source>As in the dry run</source>
        <translation>Wie geprobt</translation>
    </message>
    <message>
        <source>Begin a dry run</source>
        <translation>Probelauf beginnen</translation>
    </message>
    <message>
        <source>Compression stress at &amp;25 %</source>
        <translation>Stauchhärte bei &amp;25 %</translation>
    </message>
    <message>
        <source>Compression stress at &amp;40 %</source>
        <translation>Stauchhärte bei &amp;40 %</translation>
    </message>
    <message>
        <source>Dry run now?</source>
        <translation>Jetzt proben?</translation>
    </message>
    <message>
        <source>Dry run: %1</source>
        <translation>Probelauf: %1</translation>
    </message>
    <message>
        <source>Height of the arc from this corner to the next, outward; 0 is straight, less curves inward</source>
        <translation>Höhe des Bogens von dieser Ecke zur nächsten, nach außen; 0 ist gerade, weniger wölbt nach innen</translation>
    </message>
    <message>
        <source>Obround</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>People closin&amp;g</source>
        <translation>Leute, die &amp;schließen</translation>
    </message>
    <message>
        <source>The shop’s times are the dry run’s now.</source>
        <translation>Die Zeiten der Werkstatt sind jetzt die des Probelaufs.</translation>
    </message>
    <message>
        <source>Times of the dry run</source>
        <translation>Zeiten des Probelaufs</translation>
    </message>
    <message>
        <source>arc height (%1)</source>
        <translation>Stichhöhe (%1)</translation>
    </message>
    <message>
        <source>done by, from start of mixing</source>
        <translation>fertig bis, ab Mischbeginn</translation>
    </message>
    <message>
        <source>from the start of mixing, at </source>
        <translation>ab Mischbeginn, bei </translation>
    </message>
    <message>
        <source>%1, in packages of %2</source>
        <translation>%1, in Packungen zu %2</translation>
    </message>
    <message>
        <source>, of %1 in rings at the stiffeners</source>
        <translation>, von %1 in Ringen an den Versteifungen</translation>
    </message>
    <message>
        <source>0: not bought by packages</source>
        <translation>0: wird nicht in Packungen gekauft</translation>
    </message>
    <message>
        <source>A row has no name: type one</source>
        <translation>Eine Zeile hat keinen Namen: einen eingeben</translation>
    </message>
    <message>
        <source>Add a piece like this one (Insert)</source>
        <translation>Ein Kantholz wie dieses hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a board like this one (Insert)</source>
        <translation>Eine Platte wie diese hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a screw of this size (Insert)</source>
        <translation>Eine Schraube dieser Größe hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Add a tube like this one (Insert)</source>
        <translation>Ein Rohr wie dieses hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Amount left, opened or not</source>
        <translation>Restmenge, angebrochen oder nicht</translation>
    </message>
    <message>
        <source>As measured: the box, blocks and their heights follow from it</source>
        <translation>Laut Messung: Formkasten, Klötze und ihre Höhen folgen daraus</translation>
    </message>
    <message>
        <source>As on its label: 7a</source>
        <translation>Wie auf seinem Etikett: 7a</translation>
    </message>
    <message>
        <source>As sold</source>
        <translation>Wie verkauft</translation>
    </message>
    <message>
        <source>Lumber and tubes</source>
        <translation>Kantholz und Rohre</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Platten</translation>
    </message>
    <message>
        <source>Closures</source>
        <translation>Verschlüsse</translation>
    </message>
    <message>
        <source>Day and tools</source>
        <translation>Tag und Werkzeug</translation>
    </message>
    <message>
        <source>How the shop buys what is used up. Where a package is 0, the lists say how much is needed and no price.</source>
        <translation>Wie die Werkstatt kauft, was verbraucht wird. Wo eine Packung 0 ist, nennen die Listen den Bedarf und keinen Preis.</translation>
    </message>
    <message>
        <source>L/pour</source>
        <translation>L je Guss</translation>
    </message>
    <message>
        <source>Length of a whole sheet</source>
        <translation>Länge einer ganzen Platte</translation>
    </message>
    <message>
        <source>Measure the boards: nominal thicknesses are off by half a millimeter. Sheets at hand are used before any are bought.</source>
        <translation>Platten messen: Nenndicken weichen um einen halben Millimeter ab. Vorhandene Platten werden verbraucht, bevor gekauft wird.</translation>
    </message>
    <message>
        <source>Modulus of elasticity in bending</source>
        <translation>Elastizitätsmodul bei Biegung</translation>
    </message>
    <message>
        <source>Modulus of rupture</source>
        <translation>Biegefestigkeit</translation>
    </message>
    <message>
        <source>Of a piece</source>
        <translation>Eines Kantholzes</translation>
    </message>
    <message>
        <source>Of a package</source>
        <translation>Einer Packung</translation>
    </message>
    <message>
        <source>Of a sheet</source>
        <translation>Einer Platte</translation>
    </message>
    <message>
        <source>Of a tube</source>
        <translation>Eines Rohrs</translation>
    </message>
    <message>
        <source>Of one</source>
        <translation>Eines Stücks</translation>
    </message>
    <message>
        <source>Parts of the shop</source>
        <translation>Teile der Werkstatt</translation>
    </message>
    <message>
        <source>Sealer, release and the like count where the shop says how they are sold.</source>
        <translation>Versiegelung, Trennmittel und Ähnliches zählen, wo die Werkstatt sagt, wie sie verkauft werden.</translation>
    </message>
    <message>
        <source>Specific, oven-dry: screws hold by it</source>
        <translation>Darrdichte zu Wasser: Danach halten Schrauben</translation>
    </message>
    <message>
        <source>Standing on the plate</source>
        <translation>Auf der Druckplatte stehend</translation>
    </message>
    <message>
        <source>Take this piece away (Delete)</source>
        <translation>Dieses Kantholz entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this board away (Delete)</source>
        <translation>Diese Platte entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this closure away (Delete)</source>
        <translation>Diesen Verschluss entfernen (Entf)</translation>
    </message>
    <message>
        <source>Take this tube away (Delete)</source>
        <translation>Dieses Rohr entfernen (Entf)</translation>
    </message>
    <message>
        <source>There is no block “%1” in this drawer: write it as on its label, such as 7a</source>
        <translation>In dieser Schublade gibt es keinen Klotz „%1“: so schreiben wie auf seinem Etikett, etwa 7a</translation>
    </message>
    <message>
        <source>Tubes</source>
        <translation>Rohre</translation>
    </message>
    <message>
        <source>What holds the plate down; joints and blocks take screws of these sizes too. An added row is a screw.</source>
        <translation>Was die Druckplatte niederhält; auch Fugen und Klötze bekommen Schrauben dieser Größen. Eine hinzugefügte Zeile ist eine Schraube.</translation>
    </message>
    <message>
        <source>What is used up</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>Whole kits, sheets and lumber, those on the shelf too; one mold for the whole run; hours are the run sheet’s, our guess. Sealer, release and the like count where the shop says how they are sold.</source>
        <translation>Ganze Gebinde, Platten und Kanthölzer, auch die im Regal; eine Form für die ganze Serie; Stunden nach dem Ablaufblatt, unsere Annahme. Versiegelung, Trennmittel und Ähnliches zählen, wo die Werkstatt sagt, wie sie verkauft werden.</translation>
    </message>
    <message>
        <source>Whole sheets; blocks are made of boards at hand</source>
        <translation>Ganze Platten; Klötze entstehen aus vorhandenen Platten</translation>
    </message>
    <message>
        <source>Whole tubes; they are taken before others</source>
        <translation>Ganze Rohre; sie gehen anderen vor</translation>
    </message>
    <message>
        <source>Width of a whole sheet</source>
        <translation>Breite einer ganzen Platte</translation>
    </message>
    <message>
        <source>a batch</source>
        <translation>je Ansatz</translation>
    </message>
    <message>
        <source>a person and pour</source>
        <translation>je Person und Guss</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Grundplatte</translation>
    </message>
    <message>
        <source>by, %1</source>
        <translation>mal, %1</translation>
    </message>
    <message>
        <source>clay, mL</source>
        <translation>Modelliermasse, mL</translation>
    </message>
    <message>
        <source>closure</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>gloves, pairs</source>
        <translation>Handschuhe, Paare</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>high, %1</source>
        <translation>hoch, %1</translation>
    </message>
    <message>
        <source>in a package</source>
        <translation>je Packung</translation>
    </message>
    <message>
        <source>joint seal, mL</source>
        <translation>Fugendichtung, mL</translation>
    </message>
    <message>
        <source>left over </source>
        <translation>übrig </translation>
    </message>
    <message>
        <source>length, %1</source>
        <translation>Länge, %1</translation>
    </message>
    <message>
        <source>off one strip: </source>
        <translation>von einem Streifen: </translation>
    </message>
    <message>
        <source>outside, %1</source>
        <translation>außen, %1</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>pcs</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>pigment, mL</source>
        <translation>Pigment, mL</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Druckplatte</translation>
    </message>
    <message>
        <source>release, L</source>
        <translation>Trennmittel, L</translation>
    </message>
    <message>
        <source>sealer, L</source>
        <translation>Versiegelung, L</translation>
    </message>
    <message>
        <source>sheet, %1</source>
        <translation>Platte, %1</translation>
    </message>
    <message>
        <source>solvent, L</source>
        <translation>Lösemittel, L</translation>
    </message>
    <message>
        <source>stiffener</source>
        <translation>Versteifung</translation>
    </message>
    <message>
        <source>stiffener %1</source>
        <translation>Versteifung %1</translation>
    </message>
    <message>
        <source>stiffness, MPa</source>
        <translation>Steifigkeit, MPa</translation>
    </message>
    <message>
        <source>strength, MPa</source>
        <translation>Festigkeit, MPa</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>thick, %1</source>
        <translation>dick, %1</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Rohr</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>verbraucht</translation>
    </message>
    <message>
        <source>wall back</source>
        <translation>Wand hinten</translation>
    </message>
    <message>
        <source>wall front</source>
        <translation>Wand vorn</translation>
    </message>
    <message>
        <source>wall left</source>
        <translation>Wand links</translation>
    </message>
    <message>
        <source>wall right</source>
        <translation>Wand rechts</translation>
    </message>
    <message>
        <source>wall, %1</source>
        <translation>Wand, %1</translation>
    </message>
    <message>
        <source>wide, %1</source>
        <translation>breit, %1</translation>
    </message>
    <message>
        <source>wood glue, g</source>
        <translation>Holzleim, g</translation>
    </message>
    <message>
        <source>“%1” is there twice: give one another name</source>
        <translation>„%1“ steht doppelt da: einer einen anderen Namen geben</translation>
    </message>
    <message>
        <source>On each side, than planned; below 0: narrower</source>
        <translation>Je Seite, als geplant; unter 0: schmaler</translation>
    </message>
    <message>
        <source>Of the room within the edges, objects need %1 %, with their fit %2 %, with walls %3 %.</source>
        <translation>Vom Platz innerhalb der Ränder brauchen Gegenstände %1 %, mit ihrer Passung %2 %, mit Stegen %3 %.</translation>
    </message>
    <message>
        <source>Slots too narrow for foam to flow through by itself, by the walls this job asks for: %1.</source>
        <translation>Schlitze zwischen Klötzen, durch die Schaum nicht von selbst fließt, weil dieser Auftrag so schmale Stege verlangt: %1.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>%1, %2 beside deep ones</source>
        <translation>%1, neben tiefen %2</translation>
    </message>
    <message>
        <source>%1, %2 wide or heavy</source>
        <translation>%1, breit oder schwer %2</translation>
    </message>
    <message>
        <source>&amp;Deutsch</source>
        <translation>&amp;Deutsch</translation>
    </message>
    <message>
        <source>&amp;English</source>
        <translation>&amp;English</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>&amp;Replace by another object…</source>
        <translation>Anderen Gegenstand an diesen &amp;Ort…</translation>
    </message>
    <message>
        <source>&amp;Select all</source>
        <translation>Alles au&amp;swählen</translation>
    </message>
    <message>
        <source>&amp;Turn 15°</source>
        <translation>Um 15° dre&amp;hen</translation>
    </message>
    <message>
        <source>&amp;Zoom out</source>
        <translation>&amp;Verkleinern</translation>
    </message>
    <message>
        <source>3 L kit</source>
        <translation>Gebinde 3 L</translation>
    </message>
    <message>
        <source>50 L kit</source>
        <translation>Gebinde 50 L</translation>
    </message>
    <message>
        <source>10 L kit</source>
        <translation>Gebinde 10 L</translation>
    </message>
    <message>
        <source>Add an &amp;object…</source>
        <translation>Gegenstand &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>All &amp;vents automatic</source>
        <translation>&amp;Alle Entlüftungslöcher automatisch</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Bar clamp</source>
        <translation>Schraubzwinge</translation>
    </message>
    <message>
        <source>Battery 6F22 (9 V)</source>
        <translation>Blockbatterie 6F22 (9 V)</translation>
    </message>
    <message>
        <source>Blocks, from the datum 0, 0 in the front-left inner corner of the box</source>
        <translation>Klötze, vom Nullpunkt 0, 0 in der vorderen linken Innenecke des Kastens</translation>
    </message>
    <message>
        <source>Board of wa&amp;lls and base</source>
        <translation>Platte für Wände und &amp;Grundplatte</translation>
    </message>
    <message>
        <source>Build-u&amp;p</source>
        <translation>Auf&amp;bau</translation>
    </message>
    <message>
        <source>Change the o&amp;bject…</source>
        <translation>Gegenstand &amp;ändern…</translation>
    </message>
    <message>
        <source>Checks and &amp;foam</source>
        <translation>Prüfungen und S&amp;chaum</translation>
    </message>
    <message>
        <source>Choose its poc&amp;kets</source>
        <translation>Seine &amp;Aussparungen wählen</translation>
    </message>
    <message>
        <source>Coin cell CR2032</source>
        <translation>Knopfzelle CR2032</translation>
    </message>
    <message>
        <source>D&amp;elete</source>
        <translation>Lös&amp;chen</translation>
    </message>
    <message>
        <source>Do not loosen closures to get at it.</source>
        <translation>Dafür keine Verschlüsse lösen.</translation>
    </message>
    <message>
        <source>Do not pour a second batch on cured foam: it does not bind well.</source>
        <translation>Keinen zweiten Ansatz auf ausgehärteten Schaum gießen: Er haftet schlecht.</translation>
    </message>
    <message>
        <source>Do not pry with metal: it tears the foam and the sealer.</source>
        <translation>Nicht mit Metall hebeln: Es reißt Schaum und Versiegelung auf.</translation>
    </message>
    <message>
        <source>Do not use solvent on skin.</source>
        <translation>Auf der Haut kein Lösemittel verwenden.</translation>
    </message>
    <message>
        <source>Drawers and obje&amp;cts</source>
        <translation>Schubladen &amp;und Gegenstände</translation>
    </message>
    <message>
        <source>Stand aside, at arm’s length: tighten only what is not tight yet, or set a clamp. If a closure pulls out, step back and leave it. What has set under the gap is cut off.</source>
        <translation>Seitlich stehen, Arm gestreckt: nur anziehen, was noch nicht angezogen ist, oder eine Zwinge setzen. Reißt ein Verschluss aus: zurücktreten, so lassen. Was unter dem Spalt fest geworden ist, wird abgeschnitten.</translation>
    </message>
    <message>
        <source>F&amp;it at the ends</source>
        <translation>Passung &amp;an den Enden</translation>
    </message>
    <message>
        <source>Firm, rises ×7</source>
        <translation>Fest, steigt ×7</translation>
    </message>
    <message>
        <source>Firmn&amp;ess</source>
        <translation>&amp;Festigkeit</translation>
    </message>
    <message>
        <source>Fit th&amp;e sheet</source>
        <translation>Blatt e&amp;inpassen</translation>
    </message>
    <message>
        <source>Full&amp;y risen</source>
        <translation>&amp;Ganz aufgeschäumt</translation>
    </message>
    <message>
        <source>Gauge block 35 × 9, 100 long</source>
        <translation>Endmaß 35 × 9, 100 lang</translation>
    </message>
    <message>
        <source>Hexagon nut M16, across flats 24</source>
        <translation>Sechskantmutter M16, Schlüsselweite 24</translation>
    </message>
    <message>
        <source>ID-1 card</source>
        <translation>Karte ID-1</translation>
    </message>
    <message>
        <source>IEC 60086-2: at most 26.5 × 17.5 × 48.5; standing</source>
        <translation>IEC 60086-2: höchstens 26,5 × 17,5 × 48,5; stehend</translation>
    </message>
    <message>
        <source>IEC 60086-2: diameter 13.5–14.5, height 49.2–50.5; largest taken, lying</source>
        <translation>IEC 60086-2: Durchmesser 13,5–14,5, Höhe 49,2–50,5; größte Maße, liegend</translation>
    </message>
    <message>
        <source>IEC 60086-2: diameter 24.9–26.2, height 48.6–50.0; largest taken, lying</source>
        <translation>IEC 60086-2: Durchmesser 24,9–26,2, Höhe 48,6–50,0; größte Maße, liegend</translation>
    </message>
    <message>
        <source>IEC 60086-2: diameter 32.3–34.2, height 59.5–61.5; largest taken, standing</source>
        <translation>IEC 60086-2: Durchmesser 32,3–34,2, Höhe 59,5–61,5; größte Maße, stehend</translation>
    </message>
    <message>
        <source>IEC 60086-2: diameter 9.5–10.5, height 43.3–44.5; largest taken, lying</source>
        <translation>IEC 60086-2: Durchmesser 9,5–10,5, Höhe 43,3–44,5; größte Maße, liegend</translation>
    </message>
    <message>
        <source>IEC 60086: diameter 20.0, height 3.2, as its designation says; on edge</source>
        <translation>IEC 60086: Durchmesser 20,0, Höhe 3,2, wie die Bezeichnung sagt; hochkant</translation>
    </message>
    <message>
        <source>IEC 60297-3-100: 482.6 wide, 44.45 less 0.79 high; 25 deep with its flange taken</source>
        <translation>IEC 60297-3-100: 482,6 breit, 44,45 weniger 0,79 hoch; 25 tief mit Kantung angenommen</translation>
    </message>
    <message>
        <source>ISO 272: 24 across flats, 27.71 across corners; ISO 4032 height 14.8 (not checked against the standard)</source>
        <translation>ISO 272: Schlüsselweite 24, Eckmaß 27,71; ISO 4032: Höhe 14,8 (nicht mit der Norm abgeglichen)</translation>
    </message>
    <message>
        <source>ISO 3650: section 35 × 9 above 10 mm length (section not checked against the standard); lying</source>
        <translation>ISO 3650: Querschnitt 35 × 9 über 10 mm Länge (Querschnitt nicht mit der Norm abgeglichen); liegend</translation>
    </message>
    <message>
        <source>ISO/IEC 7810: 85.60 × 53.98 × 0.76, corners 3.18; a stack of ten, on edge</source>
        <translation>ISO/IEC 7810: 85,60 × 53,98 × 0,76, Ecken 3,18; Stapel von zehn, hochkant</translation>
    </message>
    <message>
        <source>It and its neighbor may be one thing, cut by a blank streak.</source>
        <translation>Er und sein Nachbar können ein Gegenstand sein, von einem hellen Streifen zerteilt.</translation>
    </message>
    <message>
        <source>L&amp;ists as CSV…</source>
        <translation>Listen als CS&amp;V…</translation>
    </message>
    <message>
        <source>Leave it closed and let it cure. Make a test cup, take its figures, and cast again.</source>
        <translation>Geschlossen aushärten lassen. Einen Probebecher machen, seine Werte übernehmen und neu gießen.</translation>
    </message>
    <message>
        <source>Levels f&amp;rom SVG…</source>
        <translation>&amp;Stufen aus SVG…</translation>
    </message>
    <message>
        <source>Lithium cell 18650</source>
        <translation>Lithiumzelle 18650</translation>
    </message>
    <message>
        <source>M&amp;ore in the guide</source>
        <translation>&amp;Mehr im Handbuch</translation>
    </message>
    <message>
        <source>Measured from a photo: the outline lies within ± %1 mm, which its fit allows for.</source>
        <translation>Vom Foto gemessen: der Umriss stimmt auf ± %1 mm, die Passung deckt das ab.</translation>
    </message>
    <message>
        <source>Measured from a photo: the outline lies within ± %1 mm.</source>
        <translation>Vom Foto gemessen: der Umriss stimmt auf ± %1 mm.</translation>
    </message>
    <message>
        <source>Medium, rises ×10</source>
        <translation>Mittel, steigt ×10</translation>
    </message>
    <message>
        <source>Ne&amp;xt drawer</source>
        <translation>&amp;Nächste Schublade</translation>
    </message>
    <message>
        <source>Never force the plate down on foam that rises: closures tear out one after another.</source>
        <translation>Nie die Druckplatte auf steigenden Schaum zwingen: Die Verschlüsse reißen einer nach dem anderen aus.</translation>
    </message>
    <message>
        <source>Next c&amp;heck</source>
        <translation>Nächste &amp;Prüfung</translation>
    </message>
    <message>
        <source>Nobody leans over the mold: it is under pressure.</source>
        <translation>Niemand beugt sich über die Form: Sie steht unter Druck.</translation>
    </message>
    <message>
        <source>Object sheets, true si&amp;ze…</source>
        <translation>Blätter der Gegenstände, wa&amp;hre Größe…</translation>
    </message>
    <message>
        <source>Op&amp;en recent</source>
        <translation>Zu&amp;letzt benutzt</translation>
    </message>
    <message>
        <source>Open the demo jo&amp;b: field service</source>
        <translation>Beis&amp;pielauftrag öffnen: Wetterstation</translation>
    </message>
    <message>
        <source>P&amp;aste</source>
        <translation>Ei&amp;nfügen</translation>
    </message>
    <message>
        <source>Part of it may be a shadow: hold it against the object.</source>
        <translation>Ein Teil kann Schatten sein: an den Gegenstand halten.</translation>
    </message>
    <message>
        <source>Part of it was brushed by hand.</source>
        <translation>Ein Teil ist von Hand gepinselt.</translation>
    </message>
    <message>
        <source>Particleboard 12</source>
        <translation>Spanplatte 12</translation>
    </message>
    <message>
        <source>Particleboard 16</source>
        <translation>Spanplatte 16</translation>
    </message>
    <message>
        <source>Particleboard 18</source>
        <translation>Spanplatte 18</translation>
    </message>
    <message>
        <source>Particleboard 19</source>
        <translation>Spanplatte 19</translation>
    </message>
    <message>
        <source>Particleboard 22</source>
        <translation>Spanplatte 22</translation>
    </message>
    <message>
        <source>Particleboard 25</source>
        <translation>Spanplatte 25</translation>
    </message>
    <message>
        <source>Pattern b&amp;oard</source>
        <translation>&amp;Musterplatte</translation>
    </message>
    <message>
        <source>People who mi&amp;x</source>
        <translation>&amp;Leute, die mischen</translation>
    </message>
    <message>
        <source>Pipe 110</source>
        <translation>Rohr 110</translation>
    </message>
    <message>
        <source>Pipe 125</source>
        <translation>Rohr 125</translation>
    </message>
    <message>
        <source>Pipe 32</source>
        <translation>Rohr 32</translation>
    </message>
    <message>
        <source>Pipe 40</source>
        <translation>Rohr 40</translation>
    </message>
    <message>
        <source>Pipe 50</source>
        <translation>Rohr 50</translation>
    </message>
    <message>
        <source>Pipe 75</source>
        <translation>Rohr 75</translation>
    </message>
    <message>
        <source>Pipe 90</source>
        <translation>Rohr 90</translation>
    </message>
    <message>
        <source>Plywood 18</source>
        <translation>Sperrholz 18</translation>
    </message>
    <message>
        <source>Points of it were put right by hand.</source>
        <translation>Punkte sind von Hand berichtigt.</translation>
    </message>
    <message>
        <source>In gloves and goggles, from the side: press clay on it with a stick of wood, not the palm, and hold it until the foam has set there.</source>
        <translation>Mit Handschuhen und Schutzbrille, von der Seite: Modelliermasse mit einem Holz andrücken, nicht mit der Hand, und halten, bis der Schaum dort fest ist.</translation>
    </message>
    <message>
        <source>Put the build-&amp;up together</source>
        <translation>Aufbau zusa&amp;mmensetzen</translation>
    </message>
    <message>
        <source>Rack blanking panel, 1 unit</source>
        <translation>Blindplatte 19 Zoll, 1 HE</translation>
    </message>
    <message>
        <source>Rod M8 with wing nut</source>
        <translation>Gewindestange M8 mit Flügelmutter</translation>
    </message>
    <message>
        <source>Room to st&amp;ir</source>
        <translation>Raum &amp;zum Rühren</translation>
    </message>
    <message>
        <source>Round cell R03 (AAA)</source>
        <translation>Rundzelle R03 (AAA)</translation>
    </message>
    <message>
        <source>Round cell R14 (C)</source>
        <translation>Rundzelle R14 (C)</translation>
    </message>
    <message>
        <source>Round cell R20 (D)</source>
        <translation>Rundzelle R20 (D)</translation>
    </message>
    <message>
        <source>Round cell R6 (AA)</source>
        <translation>Rundzelle R6 (AA)</translation>
    </message>
    <message>
        <source>S&amp;nap</source>
        <translation>&amp;Einrasten</translation>
    </message>
    <message>
        <source>Screw 4 × 40</source>
        <translation>Schraube 4 × 40</translation>
    </message>
    <message>
        <source>Screw 4 × 50</source>
        <translation>Schraube 4 × 50</translation>
    </message>
    <message>
        <source>Screw 4 × 60</source>
        <translation>Schraube 4 × 60</translation>
    </message>
    <message>
        <source>Screw 4.5 × 100</source>
        <translation>Schraube 4,5 × 100</translation>
    </message>
    <message>
        <source>Screw 5 × 100</source>
        <translation>Schraube 5 × 100</translation>
    </message>
    <message>
        <source>Screw 5 × 110</source>
        <translation>Schraube 5 × 110</translation>
    </message>
    <message>
        <source>Screw 5 × 60</source>
        <translation>Schraube 5 × 60</translation>
    </message>
    <message>
        <source>Screw 5 × 80</source>
        <translation>Schraube 5 × 80</translation>
    </message>
    <message>
        <source>Si&amp;zes of the finger notch…</source>
        <translation>Maße der Griffmu&amp;lde…</translation>
    </message>
    <message>
        <source>Soft, rises ×13</source>
        <translation>Weich, steigt ×13</translation>
    </message>
    <message>
        <source>T&amp;urn 90° counterclockwise</source>
        <translation>Um 90° &amp;drehen, gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>T&amp;urned when arranged</source>
        <translation>&amp;Beim Anordnen drehen</translation>
    </message>
    <message>
        <source>Take &amp;finger notch away</source>
        <translation>Griffmulde en&amp;tfernen</translation>
    </message>
    <message>
        <source>Text &amp;size</source>
        <translation>&amp;Schriftgröße</translation>
    </message>
    <message>
        <source>The program speaks English.</source>
        <translation>Das Programm spricht Deutsch.</translation>
    </message>
    <message>
        <source>Throu&amp;gh: the object stands on the drawer&apos;s bottom</source>
        <translation>&amp;Durchgehend: Der Gegenstand steht auf dem Schubladenboden</translation>
    </message>
    <message>
        <source>Trade size: 18 mm diameter, 65.0 mm high; bare cells measure up to 18.6; lying</source>
        <translation>Handelsmaß: 18 mm Durchmesser, 65,0 mm hoch; blanke Zellen messen bis 18,6; liegend</translation>
    </message>
    <message>
        <source>Way&amp;s to mend it</source>
        <translation>&amp;Wege zum Beheben</translation>
    </message>
    <message>
        <source>P&amp;lace the rest</source>
        <translation>Rest &amp;platzieren</translation>
    </message>
    <message>
        <source>Zoom &amp;to what is chosen</source>
        <translation>Ge&amp;wähltes heranholen</translation>
    </message>
    <message>
        <source>character %1 of the path</source>
        <translation>Zeichen %1 des Pfads</translation>
    </message>
    <message>
        <source>en</source>
        <comment>code of the language</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>lay on</source>
        <translation>auflegen auf</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>look</source>
        <comment>severity</comment>
        <translation>Bedenken</translation>
    </message>
    <message>
        <source>mend</source>
        <comment>severity</comment>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>note</source>
        <comment>severity</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>before changes</source>
        <translation>vor Änderungen</translation>
    </message>
    <message>
        <source>revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>stress of stiffeners</source>
        <translation>Spannung Versteifung</translation>
    </message>
    <message>
        <source>stress of the board</source>
        <translation>Spannung der Platte</translation>
    </message>
    <message>
        <source>tiles</source>
        <translation>Teilblätter</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>A corner of the plate lifts.</source>
        <translation>Eine Ecke der Druckplatte hebt sich.</translation>
    </message>
    <message>
        <source>A joint leaks.</source>
        <translation>Eine Fuge ist undicht.</translation>
    </message>
    <message>
        <source>Closures: in the order of their numbers on the plate, 1 to %1. Once cured, loosen them in reverse, all a quarter turn first, from the side.</source>
        <translation>Verschlüsse: nach den Nummern auf der Druckplatte, 1 bis %1. Nach dem Aushärten umgekehrt lösen, zuerst alle eine Vierteldrehung, von der Seite.</translation>
    </message>
    <message>
        <source>Foam on skin or in eyes.</source>
        <translation>Schaum auf der Haut oder in den Augen.</translation>
    </message>
    <message>
        <source>Give it another hour. Take the blocks’ screws out from below; blow air under an edge, gently, goggles on, nobody opposite; peel from the edges.</source>
        <translation>Noch eine Stunde warten. Die Schrauben der Klötze von unten herausnehmen; Luft unter eine Kante blasen, sachte, mit Schutzbrille, niemand gegenüber; von den Kanten her abziehen.</translation>
    </message>
    <message>
        <source>It stays short: foam does not reach the plate everywhere.</source>
        <translation>Zu wenig: Der Schaum erreicht die Druckplatte nicht überall.</translation>
    </message>
    <message>
        <source>Leave the plate off and let it rise open. Once cured, cut it flat with a long blade along the walls’ tops.</source>
        <translation>Druckplatte weglassen und offen steigen lassen. Ist er ausgehärtet, mit einer langen Klinge entlang der Oberkanten der Wände eben schneiden.</translation>
    </message>
    <message>
        <source>Stop. Eyes: rinse with running water at once for 15 minutes, lids open, then a doctor. Skin: wipe off, wash with soap and water. More in the safety data sheet, which lies ready.</source>
        <translation>Aufhören. Augen: sofort 15 Minuten bei offenen Lidern unter fließendem Wasser spülen, dann zum Arzt. Haut: abwischen, mit Wasser und Seife waschen. Weiteres im bereitliegenden Sicherheitsdatenblatt.</translation>
    </message>
    <message>
        <source>The insert is stuck.</source>
        <translation>Der Einsatz sitzt fest.</translation>
    </message>
    <message>
        <source>Cough, tight chest, wheezing, even hours later.</source>
        <translation>Husten, Enge in der Brust, Pfeifen beim Atmen, auch Stunden später.</translation>
    </message>
    <message>
        <source>Into fresh air, all stop. Call a doctor or the emergency services; show the safety data sheet.</source>
        <translation>An die frische Luft, alle hören auf. Arzt oder Notruf; Sicherheitsdatenblatt vorzeigen.</translation>
    </message>
    <message>
        <source>Do not go back in.</source>
        <translation>Nicht wieder hineingehen.</translation>
    </message>
    <message>
        <source>You are late: foam is at the plate’s height before the plate is on.</source>
        <translation>Zu spät: Der Schaum ist auf Höhe der Druckplatte, bevor sie aufliegt.</translation>
    </message>
    <message>
        <source>pilot</source>
        <translation>in Wand</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>braucht %1</translation>
    </message>
    <message>
        <source>Numbers are the order of cuts, each from edge to edge of the piece; where a number has no room on its cut, a line leads to it. Kerf %1 and %2 off every edge are taken care of.</source>
        <translation>Zahlen sind die Reihenfolge der Schnitte, jeder von Kante zu Kante des Stücks; wo eine Zahl auf ihrem Schnitt keinen Platz hat, führt eine Linie hin. Schnittbreite %1 und %2 von jeder Kante sind berücksichtigt.</translation>
    </message>
    <message>
        <source>before the pour</source>
        <translation>vor dem Guss</translation>
    </message>
    <message>
        <source>Its block’s number or name</source>
        <translation>Nummer oder Name seines Klotzes</translation>
    </message>
    <message>
        <source>Box of %1, from above</source>
        <translation>Kasten von %1, von oben</translation>
    </message>
    <message>
        <source>Arrange, Tidy makes the walls equal.</source>
        <translation>Anordnen, Aufräumen macht die Stege gleich.</translation>
    </message>
    <message>
        <source>Depths from boards at &amp;hand</source>
        <translation>&amp;Tiefen aus vorhandenen Platten</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>a screw&apos;s diameter</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 of the boards, lumber, tubes, screws and closures to buy have no price: they are not in it.</source>
        <translation>%1 der zu kaufenden Platten, Kanthölzer, Rohre, Schrauben und Verschlüsse haben keinen Preis: sie sind nicht enthalten.</translation>
    </message>
    <message>
        <source>%1 pins %2</source>
        <translation>%1 Stifte %2</translation>
    </message>
    <message>
        <source>%1 pcs %2</source>
        <translation>%1 Stück %2</translation>
    </message>
    <message>
        <source>%1, shared</source>
        <translation>%1, gemeinsam</translation>
    </message>
    <message>
        <source>%1, sheet %2 of %3</source>
        <translation>%1, Platte %2 von %3</translation>
    </message>
    <message>
        <source>%1; %2 without a price not in it</source>
        <translation>%1; %2 ohne Preis nicht enthalten</translation>
    </message>
    <message>
        <source>O&amp;utlines found; those with a check are added</source>
        <translation>Gefundene Umrisse; angekreu&amp;zte kommen dazu</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>Anhal&amp;ten</translation>
    </message>
    <message>
        <source>Cut</source>
        <comment>of a saw</comment>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Cuts in order</source>
        <translation>Schnitte der Reihe nach</translation>
    </message>
    <message>
        <source>Fence at</source>
        <translation>Anschlag auf</translation>
    </message>
    <message>
        <source>Part cut free</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Of the piece</source>
        <translation>Vom Stück</translation>
    </message>
    <message>
        <source>This height for all without on&amp;e</source>
        <translation>Diese Höhe für alle &amp;ohne</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>glue</source>
        <comment>in place of screws</comment>
        <translation>Leim</translation>
    </message>
    <message>
        <source>glued</source>
        <translation>geleimt</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>pin %1 mm</source>
        <translation>Stift %1 mm</translation>
    </message>
    <message>
        <source>pin %2</source>
        <translation>Stift %2</translation>
    </message>
    <message>
        <source>headless nails for pins, to nip off %1</source>
        <translation>Nägel ohne Kopf für Stifte, zum Abzwicken %1</translation>
    </message>
    <message>
        <source>screw %1 mm</source>
        <translation>Schraube %1 mm</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>On the clipboard, for this job or another, pockets: %1.</source>
        <translation>In der Zwischenablage, für diesen Auftrag oder einen anderen, Aussparungen: %1.</translation>
    </message>
    <message>
        <source>%1 bearers</source>
        <translation>%1 Lagerhölzer</translation>
    </message>
    <message>
        <source>One bearer</source>
        <translation>Ein Lagerholz</translation>
    </message>
    <message>
        <source>%1, through bearer and base</source>
        <translation>%1, durch Lagerholz und Grundplatte</translation>
    </message>
    <message>
        <source>%1: bows %2, at %3 % of its limit.</source>
        <translation>%1: biegt sich %2, bei %3 % seiner Grenze.</translation>
    </message>
    <message>
        <source>, pilot holes of %1 in rings for the bearers’ ends</source>
        <translation>, Vorbohrungen %1 in Ringen für die Enden der Lagerhölzer</translation>
    </message>
    <message>
        <source>As the worst closure.</source>
        <translation>Wie der am stärksten gezogene Verschluss.</translation>
    </message>
    <message>
        <source>Base on %1 bearers %2</source>
        <translation>Grundplatte auf %1 Lagerhölzern %2</translation>
    </message>
    <message>
        <source>Base on one bearer %1</source>
        <translation>Grundplatte auf einem Lagerholz %1</translation>
    </message>
    <message>
        <source>Base without bearers</source>
        <translation>Grundplatte ohne Lagerhölzer</translation>
    </message>
    <message>
        <source>Bearers are drawn dashed too: sink every screw’s head, then put them under the base; they stand on the bench. Foam pushes the base down as hard as the plate up, and a bench holds only the mold’s weight.</source>
        <translation>Auch Lagerhölzer sind gestrichelt: Jeden Schraubenkopf versenken, dann kommen sie unter die Grundplatte; sie stehen auf der Werkbank. Der Schaum drückt die Grundplatte so stark nach unten wie die Druckplatte nach oben, und eine Werkbank hält nur das Gewicht der Form.</translation>
    </message>
    <message>
        <source>Blocks that stand on it make it stiffer; they are not counted.</source>
        <translation>Klötze, die darauf stehen, machen sie steifer; sie zählen nicht mit.</translation>
    </message>
    <message>
        <source>Foam pushes the base down as hard as the plate up, and the walls pull its rim up: a bench under it holds only the mold’s weight. Where it bends too far bare, pieces go under it as stiffeners go on the plate.</source>
        <translation>Der Schaum drückt die Grundplatte so stark nach unten wie die Druckplatte nach oben, und die Wände ziehen ihren Rand hoch: Eine Werkbank darunter hält nur das Gewicht der Form. Wo sie sich blank zu weit biegt, kommen Hölzer darunter wie Versteifungen auf die Druckplatte.</translation>
    </message>
    <message>
        <source>The greatest pull of a screw from below at the pressure to build for.</source>
        <translation>Die größte Zugkraft einer Schraube von unten beim Bemessungsdruck.</translation>
    </message>
    <message>
        <source>The greatest sag over the opening at the pressure when closed: it is the face of the insert.</source>
        <translation>Der größte Durchhang über der Öffnung beim Druck in der geschlossenen Form: Das ist die Oberseite des Einsatzes.</translation>
    </message>
    <message>
        <source>The same sums as the plate’s, of the box’s board and the screws in the walls’ feet.</source>
        <translation>Dieselbe Rechnung wie bei der Druckplatte, mit der Platte des Kastens und den Schrauben in den Füßen der Wände.</translation>
    </message>
    <message>
        <source>bearer</source>
        <translation>Lagerholz</translation>
    </message>
    <message>
        <source>bearer %1</source>
        <translation>Lagerholz %1</translation>
    </message>
    <message>
        <source>bearers under the base</source>
        <translation>Lagerhölzer unter der Grundplatte</translation>
    </message>
    <message>
        <source>bow of the base</source>
        <translation>Durchbiegung der Grundplatte</translation>
    </message>
    <message>
        <source>box walls’ stress</source>
        <translation>Spannung der Kastenwände</translation>
    </message>
    <message>
        <source>stress of box walls</source>
        <translation>Spannung der Kastenwände</translation>
    </message>
    <message>
        <source>worst foot screw</source>
        <translation>größte Zugkraft am Fuß</translation>
    </message>
    <message>
        <source>air shut in</source>
        <translation>eingeschlossene Luft</translation>
    </message>
    <message>
        <source>left by the vents</source>
        <translation>von den Entlüftungslöchern übrig gelassen</translation>
    </message>
    <message>
        <source>warmer today</source>
        <translation>heute wärmer</translation>
    </message>
    <message>
        <source>shop and parts, than where the rise was read</source>
        <translation>Werkstatt und Komponenten, als wo der Steigfaktor abgelesen wurde</translation>
    </message>
</context>
</TS>
