// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_dialog.h"
#include "photo/photo_board.h"
#include "photo/photo_steps.h"

#include <functional>

class QComboBox;
class QLabel;
class QListWidget;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QToolButton;

namespace drawercast::app::photo {

class FoundEdit;
class ShotEdit;

/// Objects measured from a photo or a scan: the picture laid flat with the outlines found in it, each to be
/// put right by its points or by a brush, with a name, a height and a depth. Taking gives away the chosen
/// ones.
class PhotoDialog final : public FormDialog {
    Q_OBJECT
  public:
    explicit PhotoDialog(const FormContext& context, QWidget* parent = nullptr);

    void load(const QString& path); ///< what is wrong with the file is said in the dialog
    /// The chosen outlines as objects without ids; empty while something is to mend.
    std::vector<job::Object> objects() const;
    Board& board() { return *board_; }
    const State& state() const { return steps_.now(); }
    bool busy() const { return busy_; }
    /// Who is asked for a file; by a dialog otherwise.
    std::function<QString()> ask_file;

  protected:
    FieldProblems show_problems() override;
    void done(int result) override; ///< nothing is worked on behind a closed dialog

  private:
    QWidget* make_tools();
    QWidget* make_foot();
    QStackedWidget* make_telling();
    QWidget* make_side();
    void choose_file();
    void measure();
    void take_flat(const Flat& flat);
    void look();
    void take_found(const capture::Traced& found);
    void take_refusal(const Problem& problem);
    void stop();
    void set_busy(const QString& words, int percent);
    void set_idle();
    void push(State state, const QString& typing = {});
    void change_outline(int row, const Outline& outline, const QString& typing);
    void brush(const Stroke& stroke);
    void height_for_all(double mm);
    void go_to_next_height();
    void go(bool back);
    void show_state();
    void show_list();
    void show_refusal();
    void show_how();
    void name_new(std::vector<Outline>& outlines) const;
    int row_of(int number) const; ///< −1: there is none
    const Expected<Measured>& measured_now(int row) const;

    Worker worker_;
    Steps steps_;
    int chosen_ = 0; ///< number of the outline that the maker is at
    bool busy_ = false;
    bool new_file_ = false; ///< chosen, and no outline found in it yet
    bool filling_ = false;
    /// What outlines come to is worked out once for each change of one.
    struct Known {
        Outline outline;
        Flat flat;
        Expected<Measured> measured;
    };
    mutable std::vector<Known> known_;
    Board* board_;
    ShotEdit* shot_;
    FoundEdit* found_;
    QListWidget* list_;
    QLabel *refusal_, *progress_words_, *file_name_, *how_;
    QString how_to_; ///< use the tool in hand
    QProgressBar* progress_;
    QStackedWidget* telling_ = nullptr; ///< how the tool is used, or how far the measuring is
    QToolButton *undo_ = nullptr, *redo_ = nullptr;
    QPushButton* choose_;
};

} // namespace drawercast::app::photo
