// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/photo_dialog.h"

#include "capture/picture_header.h"
#include "job/store.h"

#include "forms/field_rows.h"
#include "forms/notation.h"
#include "forms/problem_words.h"
#include "photo/brushed.h"
#include "photo/found_edit.h"
#include "photo/shot_edit.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>

#include <algorithm>
#include <utility>

namespace drawercast::app::photo {

namespace {

constexpr int reading_percent = 15, looking_percent = 60;

bool same_frame(const Flat& a, const Flat& b) {
    return a && b && a->width_px == b->width_px && a->height_px == b->height_px &&
           a->px_per_mm == b->px_per_mm && a->scanned == b->scanned && a->bgr == b->bgr;
}

bool meets(const Outline& outline, const std::vector<Stroke>& strokes) {
    shape::Box box;
    for (const shape::Corner& corner : outline.seen.corners) box.add(corner.at);
    return std::any_of(strokes.begin(), strokes.end(),
                       [&box](const Stroke& stroke) { return shape::near(box, box_of(stroke)); });
}

} // namespace

void PhotoDialog::choose_file() {
    const QString path = ask_file ? ask_file()
                                  : QFileDialog::getOpenFileName(this, tr("Photo or scan"), {},
                                                                 tr("Photos and scans (*.jpg *.jpeg *.png)"));
    if (!path.isEmpty()) load(path);
}

void PhotoDialog::load(const QString& path) {
    worker_.stop();
    set_idle();
    State next;
    next.file_name = QFileInfo(path).fileName();
    // A pipe or a device would be read for ever.
    auto bytes = QFileInfo(path).isFile()
                     ? job::read_file(path.toStdString(), capture::picture_bytes_most)
                     : Expected<std::string>(Problem("photo-file", {}, phrase("This is no file"),
                                                     phrase("Choose a photo or a scan")));
    if (!bytes)
        next.refusal = bytes.error();
    else if (const auto header = capture::picture_header(*bytes); !header)
        next.refusal = header.error();
    else
        next.file = std::make_shared<const std::string>(std::move(*bytes));
    new_file_ = next.file != nullptr;
    push(std::move(next));
    measure();
}

void PhotoDialog::measure() {
    if (!state().file || !shot_->rows().own_problems().empty()) return;
    set_busy(tr("Looking for the sheet…"), reading_percent);
    worker_.lay_flat(state().file, shot_->shot());
}

/// Where only the camera's distance was said anew the picture is the same, and so are its outlines.
void PhotoDialog::take_flat(const Flat& flat) {
    State next = state().of_file();
    if (same_frame(state().flat, flat) && state().looked) {
        next = state();
        next.flat = flat;
        set_idle();
        return push(std::move(next));
    }
    next.flat = flat;
    next.looked = false;
    if (state().flat)
        push(std::move(next));
    else { // the answer to the file that was just chosen
        steps_.replace(std::move(next));
        show_state();
    }
    look();
}

void PhotoDialog::look() {
    set_busy(tr("Looking for outlines…"), looking_percent);
    worker_.look(state().flat, state().strokes);
}

void PhotoDialog::take_found(const capture::Traced& found) {
    State next = state();
    next.outlines = looked_again(next.outlines, found);
    next.looked = true;
    next.refusal.reset();
    for (Outline& one : next.outlines) one.brushed = meets(one, next.strokes);
    name_new(next.outlines);
    steps_.replace(std::move(next));
    if (row_of(chosen_) < 0 && !state().outlines.empty()) chosen_ = state().outlines.front().number;
    set_idle();
    show_state();
    if (std::exchange(new_file_, false)) found_->go_to_height(); // that is what no photo tells
}

/// Nothing is shown as measured that was not. After a stroke the outlines stay, to be gone on with, and are
/// not taken while they are refused.
void PhotoDialog::take_refusal(const Problem& problem) {
    const bool looking = state().flat && !state().looked;
    State next = looking ? state() : state().of_file();
    next.looked = true;
    next.refusal = problem;
    set_idle();
    if (looking || !state().flat) {
        steps_.replace(std::move(next));
        show_state();
    } else {
        push(std::move(next));
    }
}

void PhotoDialog::stop() {
    worker_.stop();
    set_idle();
    State next = state();
    if (!next.flat && !next.refusal)
        next.refusal =
            Problem("photo-stopped", {}, phrase("Measuring was stopped"), phrase("Choose the photo again"));
    next.looked = true;
    steps_.replace(std::move(next));
    show_state();
}

void PhotoDialog::set_busy(const QString& words, int percent) {
    busy_ = true;
    progress_words_->setText(words);
    progress_->setValue(percent);
    board_->set_waiting(words);
    telling_->setCurrentIndex(1);
    refresh();
}

void PhotoDialog::set_idle() {
    busy_ = false;
    board_->set_waiting({});
    telling_->setCurrentIndex(0);
}

void PhotoDialog::push(State state, const QString& typing) {
    steps_.push(std::move(state), typing);
    show_state();
}

void PhotoDialog::change_outline(int row, const Outline& outline, const QString& typing) {
    if (row < 0 || row >= static_cast<int>(state().outlines.size())) return;
    State next = state();
    next.outlines[static_cast<std::size_t>(row)] = outline;
    push(std::move(next), typing);
}

void PhotoDialog::brush(const Stroke& stroke) {
    State next = state();
    next.strokes.push_back(stroke);
    next.outlines = brushed(std::move(next.outlines), stroke);
    name_new(next.outlines);
    next.looked = false;
    push(std::move(next));
    look();
}

void PhotoDialog::height_for_all(double mm) {
    State next = state();
    for (Outline& one : next.outlines)
        if (!one.height_mm) one.height_mm = mm;
    push(std::move(next));
}

/// After Enter in a height: on to the next outline that has none.
void PhotoDialog::go_to_next_height() {
    const auto& all = state().outlines;
    for (std::size_t step = 1; step < all.size(); ++step) {
        const std::size_t i = (static_cast<std::size_t>(std::max(0, board_->chosen())) + step) % all.size();
        if (all[i].height_mm || !all[i].taken) continue;
        board_->choose(static_cast<int>(i));
        return found_->go_to_height();
    }
}

void PhotoDialog::go(bool back) {
    worker_.stop();
    set_idle();
    if (back)
        steps_.undo();
    else
        steps_.redo();
    show_state();
    if (state().flat && !state().looked) look(); // it was overtaken before it had its answer
}

int PhotoDialog::row_of(int number) const {
    for (std::size_t i = 0; i < state().outlines.size(); ++i)
        if (state().outlines[i].number == number) return static_cast<int>(i);
    return -1;
}

void PhotoDialog::name_new(std::vector<Outline>& outlines) const {
    std::size_t number = 0;
    int last = 0;
    for (const Outline& one : outlines) last = std::max(last, one.number);
    const auto used = [&](const std::string& name) {
        return std::any_of(outlines.begin(), outlines.end(),
                           [&](const Outline& o) { return o.name == name; });
    };
    for (Outline& one : outlines) {
        if (one.number == 0) one.number = ++last;
        while (one.name.empty()) {
            const std::string name = tr("Shape %1").arg(++number).toStdString();
            if (!used(name)) one.name = name;
        }
    }
}

const Expected<Measured>& PhotoDialog::measured_now(int row) const {
    const auto i = static_cast<std::size_t>(row);
    const Outline& outline = state().outlines[i];
    if (i < known_.size() && known_[i].flat == state().flat && known_[i].outline == outline)
        return known_[i].measured;
    Known known{outline, state().flat, measured(outline, *state().flat)};
    if (i >= known_.size()) return known_.emplace_back(std::move(known)).measured;
    known_[i] = std::move(known);
    return known_[i].measured;
}

FieldProblems PhotoDialog::show_problems() {
    FieldProblems shown;
    for (auto& problem : shot_->rows().show(shot_->rows().own_problems(), shown))
        shown.push_back(std::move(problem));
    const auto whole = [&shown, this](const QString& words) {
        FieldProblem of_all{"", words};
        of_all.field = choose_;
        shown.push_back(std::move(of_all));
    };
    if (busy_) whole(tr("The photo is being measured"));
    if (state().refusal) whole(problem_words(*state().refusal));
    if (!busy_ && !state().refusal && !state().flat) whole(tr("Choose a photo or a scan"));
    FieldProblems fields = found_->rows().own_problems();
    if (board_->chosen() >= 0 && state().outlines[static_cast<std::size_t>(board_->chosen())].name.empty())
        fields.push_back({"/name", tr("To fill in")});
    if (board_->chosen() < 0 || !state().outlines[static_cast<std::size_t>(board_->chosen())].taken)
        fields.clear(); // those of a row that is left out don't matter
    for (auto& problem : found_->rows().show(fields, shown)) shown.push_back(std::move(problem));
    bool any = false;
    for (std::size_t i = 0; state().flat && i < state().outlines.size(); ++i) {
        const Outline& one = state().outlines[i];
        if (!one.taken) continue;
        any = true;
        const bool chosen = static_cast<int>(i) == board_->chosen();
        const QString name = QString::fromStdString(one.name);
        if (one.name.empty() && !chosen) whole(tr("An outline has no name"));
        if (!one.height_mm && !chosen) {
            FieldProblem height{"/height", tr("“%1” has no height yet").arg(name)};
            height.field = list_;
            shown.push_back(std::move(height));
        }
        if (const auto& measured = measured_now(static_cast<int>(i)); !measured) {
            FieldProblem wrong{"/outline", tr("%1: %2").arg(name, problem_words(measured.error()))};
            wrong.field = list_;
            shown.push_back(std::move(wrong));
        }
    }
    if (!any && state().flat && !busy_ && !state().refusal) whole(tr("No outline is chosen"));
    return shown;
}

std::vector<job::Object> PhotoDialog::objects() const {
    if (!problems().empty() || !state().flat) return {};
    std::vector<job::Object> out;
    for (const Outline& one : state().outlines) {
        if (!one.taken) continue;
        auto object = object_of(one, *state().flat, context().firmness);
        if (!object) return {};
        out.push_back(std::move(*object));
    }
    return out;
}

void PhotoDialog::done(int result) {
    worker_.stop();
    set_idle();
    FormDialog::done(result);
}

} // namespace drawercast::app::photo
