// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/field_rows.h"
#include "forms/notation.h"
#include "forms/problem_words.h"
#include "photo/found_edit.h"
#include "photo/photo_dialog.h"
#include "photo/shot_edit.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace drawercast::app::photo {

namespace {

constexpr double brush_widths_mm[] = {1, 2, 4, 8, 16};
constexpr int usual_width = 2;
constexpr int side_least_px = 336, side_most_px = 372, list_px = 104;

} // namespace

PhotoDialog::PhotoDialog(const FormContext& context, QWidget* parent)
    : FormDialog(tr("Measure from a photo"), tr("Add to the object list"), context, parent),
      board_(new Board), shot_(new ShotEdit(context)), found_(new FoundEdit(context)), list_(new QListWidget),
      refusal_(new QLabel), progress_words_(new QLabel), file_name_(new QLabel), how_(new QLabel),
      progress_(new QProgressBar), choose_(new QPushButton(tr("&Choose a photo…"))) {
    auto* body = new QWidget;
    auto* columns = new QHBoxLayout(body);
    columns->setSpacing(16);
    auto* left = new QVBoxLayout;
    left->addWidget(make_tools());
    refusal_->setWordWrap(true);
    refusal_->setVisible(false);
    left->addWidget(refusal_);
    left->addWidget(board_, 1);
    left->addWidget(make_foot());
    columns->addLayout(left, 2); // the side takes its most first
    columns->addWidget(make_side(), 1);
    connect(&worker_, &Worker::flat, this, &PhotoDialog::take_flat);
    connect(&worker_, &Worker::looked, this, &PhotoDialog::take_found);
    connect(&worker_, &Worker::refused, this, &PhotoDialog::take_refusal);
    connect(choose_, &QPushButton::clicked, this, &PhotoDialog::choose_file);
    connect(board_, &Board::dropped, this, &PhotoDialog::load);
    connect(board_, &Board::chose, this, [this](int row) {
        chosen_ = row < 0 ? 0 : state().outlines[static_cast<std::size_t>(row)].number;
        show_list(), refresh();
    });
    connect(board_, &Board::changed, this, [this](int row, const shape::Polygon& seen) {
        Outline now = state().outlines[static_cast<std::size_t>(row)];
        now.seen = seen;
        now.by_hand = true;
        change_outline(row, now, {});
    });
    connect(board_, &Board::stroked, this, &PhotoDialog::brush);
    connect(shot_, &ShotEdit::changed, this, &PhotoDialog::measure);
    connect(&shot_->rows(), &FieldRows::edited, this, [this] { refresh(); });
    connect(found_, &FoundEdit::edited, this, [this](const Outline& outline, const QString& what) {
        change_outline(board_->chosen(), outline, QStringLiteral("%1 %2").arg(what).arg(outline.number));
    });
    connect(found_, &FoundEdit::height_for_all, this, &PhotoDialog::height_for_all);
    connect(&found_->height(), &QLineEdit::returnPressed, this, &PhotoDialog::go_to_next_height);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!filling_) board_->choose(row);
    });
    connect(list_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (filling_) return;
        const int row = list_->row(item);
        Outline now = state().outlines[static_cast<std::size_t>(row)];
        now.taken = item->checkState() == Qt::Checked;
        change_outline(row, now, {});
    });
    set_body(body);
    show_state();
    choose_->setFocus();
}

QWidget* PhotoDialog::make_tools() {
    auto* row = new QWidget;
    auto* tools = new QHBoxLayout(row);
    tools->setContentsMargins(0, 0, 0, 0);
    choose_->setAutoDefault(false);
    tools->addWidget(choose_);
    auto* group = new QButtonGroup(row);
    const auto hand = [&](const QString& words, const QString& tip, const char* key, Board::Tool which) {
        auto* button = tool({}, words, QKeySequence(key), [this, which, tip] {
            board_->set_tool(which);
            how_to_ = tip;
            show_how();
        });
        button->setToolTip(tr("%1 (%2)").arg(tip, QKeySequence(key).toString(QKeySequence::NativeText)));
        button->setCheckable(true);
        button->setChecked(which == Board::Tool::points);
        if (which == Board::Tool::points) how_to_ = tip;
        group->addButton(button);
        tools->addWidget(button);
    };
    hand(tr("Points"),
         tr("Choose outlines and drag their points; a double click on a side makes one, Delete takes the "
            "chosen one away"),
         "Ctrl+1", Board::Tool::points);
    hand(tr("Brush in"), tr("Paint over what belongs to an object and was not seen as such"), "Ctrl+2",
         Board::Tool::add);
    hand(tr("Brush out"), tr("Paint over what is no object: shadows, marks, dirt"), "Ctrl+3",
         Board::Tool::take_away);
    auto* width = new QComboBox;
    width->setAccessibleName(tr("Width of the brush"));
    width->setToolTip(tr("Width of the brush"));
    const auto notation = length_notation(context());
    for (const double mm : brush_widths_mm)
        width->addItem(tr("%1 %2", "length, unit").arg(notation.shown(mm), notation.unit), mm / 2);
    connect(width, &QComboBox::currentIndexChanged, this,
            [this, width] { board_->set_brush_radius(width->currentData().toDouble()); });
    width->setCurrentIndex(usual_width);
    tools->addWidget(width);
    tools->addStretch(1);
    return row;
}

QWidget* PhotoDialog::make_foot() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(telling_ = make_telling(), 1);
    undo_ = tool("undo", tr("Undo"), QKeySequence::Undo, [this] { go(true); });
    redo_ = tool("redo", tr("Redo"), QKeySequence::Redo, [this] { go(false); });
    line->addWidget(undo_);
    line->addWidget(redo_);
    line->addWidget(tool("fit", tr("Show all of it"), QKeySequence("Ctrl+0"), [this] { board_->fit(); }));
    return row;
}

/// As high with either, so that the photo stays where it is.
QStackedWidget* PhotoDialog::make_telling() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* stop = new QPushButton(tr("S&top"));
    stop->setAutoDefault(false);
    connect(stop, &QPushButton::clicked, this, &PhotoDialog::stop);
    progress_->setTextVisible(false);
    progress_->setAccessibleName(tr("How much of the measuring is done"));
    line->addWidget(progress_words_);
    line->addWidget(progress_, 1);
    line->addWidget(stop);
    how_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    how_->setWordWrap(true);
    auto* telling = new QStackedWidget;
    telling->setFixedHeight(std::max(row->sizeHint().height(), 2 * how_->fontMetrics().lineSpacing()));
    telling->addWidget(how_);
    telling->addWidget(row);
    return telling;
}

QWidget* PhotoDialog::make_side() {
    auto* side = new QWidget;
    side->setMinimumWidth(side_least_px);
    side->setMaximumWidth(side_most_px);
    auto* right = new QVBoxLayout(side);
    right->setContentsMargins(0, 0, 0, 0);
    right->addWidget(shot_);
    auto* head = new QLabel(tr("O&utlines found; those with a check are added"));
    QFont bold = font();
    bold.setBold(true);
    head->setFont(bold);
    head->setBuddy(list_);
    list_->setAccessibleName(tr("Outlines found"));
    list_->setFixedHeight(list_px);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    file_name_->setAccessibleName(tr("Name of the picture"));
    file_name_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    file_name_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    file_name_->setVisible(false); // until there is one
    right->addWidget(file_name_);
    right->addWidget(head);
    right->addWidget(list_);
    right->addWidget(found_);
    right->addStretch(1);
    return side;
}

void PhotoDialog::show_state() {
    if (board_->set_picture_if_other(state().flat)) known_.clear();
    known_.resize(std::min(known_.size(), state().outlines.size()));
    std::vector<Shown> shown;
    for (std::size_t i = 0; i < state().outlines.size(); ++i) {
        const auto& measured = measured_now(static_cast<int>(i));
        const Outline& one = state().outlines[i];
        const bool other = measured && !(measured->polygon == one.seen);
        shown.push_back({one, other ? measured->polygon : shape::Polygon{}});
    }
    board_->set_outlines(std::move(shown), state().strokes, row_of(chosen_));
    shot_->show_camera(state().flat.get());
    file_name_->setText(state().file_name);
    file_name_->setVisible(!state().file_name.isEmpty());
    undo_->setEnabled(steps_.can_undo());
    redo_->setEnabled(steps_.can_redo());
    show_refusal();
    show_how();
    show_list();
    refresh();
}

void PhotoDialog::show_list() {
    filling_ = true;
    const auto notation = length_notation(context());
    const auto rows = static_cast<int>(state().outlines.size());
    while (list_->count() > rows) delete list_->takeItem(list_->count() - 1);
    while (list_->count() < rows) list_->addItem(QString());
    for (int row = 0; row < rows; ++row) {
        const Outline& one = state().outlines[static_cast<std::size_t>(row)];
        shape::Box box;
        if (const auto& measured = measured_now(row))
            for (const auto& corner : measured->polygon.corners) box.add(corner.at);
        const auto size = [&](double mm) { return notation.shown(std::round(mm * 10) / 10); };
        QString words = QString::fromStdString(one.name);
        if (!box.empty())
            words = tr("%1, %2 × %3 %4", "name, length, width, unit")
                        .arg(words, size(box.width()), size(box.height()), notation.unit);
        if (one.maybe_shadow) words = tr("%1, with shadow?", "an outline").arg(words);
        if (one.maybe_part) words = tr("%1, one with its neighbor?", "an outline").arg(words);
        QListWidgetItem* item = list_->item(row);
        item->setText(words);
        item->setToolTip(words);
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        item->setCheckState(one.taken ? Qt::Checked : Qt::Unchecked);
    }
    list_->setCurrentRow(board_->chosen());
    filling_ = false;
    const int row = board_->chosen();
    const bool any = row >= 0 && row < rows && state().flat;
    found_->show_outline(any ? &state().outlines[static_cast<std::size_t>(row)] : nullptr, state().flat,
                         any ? &measured_now(row) : nullptr,
                         std::any_of(state().outlines.begin(), state().outlines.end(),
                                     [](const Outline& one) { return !one.height_mm; }));
}

void PhotoDialog::show_how() { how_->setText(state().flat ? how_to_ : QString()); }

void PhotoDialog::show_refusal() {
    refusal_->setVisible(state().refusal.has_value());
    if (!state().refusal) return;
    refusal_->setText(
        tr("<b>This can’t be measured.</b> %1.").arg(problem_words(*state().refusal).toHtmlEscaped()));
}

} // namespace drawercast::app::photo
