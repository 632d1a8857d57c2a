// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/sheet_canvas.h"
#include "sheets/box_and_cuts.h"
#include "theme/palette.h"

#include <QFont>
#include <QWidget>

#include <vector>

class QLabel;
class QTabBar;

namespace drawercast::app {

class Badge;
class BuildUpBar;
class CutOrder;
class Document;
class Preferences;
class Ruler;
class RunList;
class Selection;
class TitleStrip;

/// The middle of the window: tabs of the sheets, rulers, the sheet, its title strip.
class SheetArea final : public QWidget {
    Q_OBJECT
  public:
    SheetArea(Document& document, Selection& selection, const Preferences& preferences,
              QWidget* parent = nullptr);

    SheetCanvas& canvas() { return *canvas_; }
    TitleStrip& strip() { return *strip_; }
    void show_sheet(SheetId shown);
    SheetId shown() const { return canvas_->sheet(); }
    void show_cut(const sheets::CutPlace& cut); ///< on the sheet of the box and its cuts
    void show_printed();                        ///< whether the job has changed since its print-out
    void set_theme(const theme::Theme& theme);

  signals:
    void sheet_changed();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Tabs { ///< what their words follow from
        int width = 0;
        QFont font;
        std::vector<int> mends;
        bool operator==(const Tabs&) const = default;
    };
    void refresh();
    void show_rulers();
    void show_tabs();
    bool short_of_room() const;
    void show_strip();

    Document& document_;
    Selection& selection_;
    const Preferences& preferences_;
    QTabBar* tabs_;
    std::vector<Badge*> mends_; ///< one to a tab
    Tabs shown_tabs_;
    SheetCanvas* canvas_;
    Ruler* above_;
    Ruler* left_;
    QLabel* corner_;   ///< between the rulers: their unit
    BuildUpBar* look_; ///< below a picture that can be turned
    CutOrder* cuts_;   ///< below the box and its cuts
    RunList* run_;     ///< below the bars of the run sheet
    TitleStrip* strip_;
    QString changed_; ///< since the last print-out
};

/// "1 : 2.8" for a reduction, "2 : 1" for an enlargement.
QString scale_text(double reduction);

} // namespace drawercast::app
