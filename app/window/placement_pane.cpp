// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/placement_pane.h"

#include "forms/length_edit.h"
#include "panes/head.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr job::Range any_turn{"", -36000, 36000};
constexpr int most_words = 3; ///< lines

} // namespace

PlacementPane::PlacementPane(QWidget* parent)
    : QWidget(parent), head_(new Head("drawer-frame", tr("Position"), this)), grid_(new QGridLayout),
      words_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head_);
    grid_->setContentsMargins(12, 0, 12, 4);
    grid_->setHorizontalSpacing(6);
    grid_->setVerticalSpacing(2);
    column->addLayout(grid_);
    words_->setContentsMargins(12, 2, 12, 8);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words_->setTextFormat(Qt::PlainText);
    words_->setMinimumHeight(most_words * fontMetrics().lineSpacing() +
                             10); // the same for each pocket: nothing jumps
    column->addWidget(words_);
    make_fields();
    fill();
}

/// Fields know their unit from the start: another unit, other fields.
void PlacementPane::make_fields() {
    for (auto* old : {left_, front_, turn_}) delete old;
    const QList<QLabel*> captions = findChildren<QLabel*>(QStringLiteral("caption"));
    qDeleteAll(captions);
    left_ = new LengthEdit(shown_.context, outline_place, this);
    front_ = new LengthEdit(shown_.context, outline_place, this);
    turn_ = new ValueEdit(number_notation(shown_.context, tr("°")), any_turn, this);
    const struct {
        ValueEdit* edit;
        QString caption;
        QString tip;
    } fields[] = {
        {left_, tr("Left edge"), tr("Of all that is chosen, notches too; from the drawer’s left")},
        {front_, tr("Front edge"), tr("Of all that is chosen, notches too; from the drawer’s front")},
        {turn_, tr("Turn"), tr("Degrees, counterclockwise")},
    };
    int column = 0;
    for (const auto& field : fields) {
        auto* caption = new QLabel(field.caption, this);
        caption->setObjectName(QStringLiteral("caption"));
        caption->setBuddy(field.edit);
        field.edit->setAccessibleName(field.caption);
        field.edit->setToolTip(field.tip);
        field.edit->setMinimumWidth(56);
        field.edit->allow_empty({});
        field.edit->installEventFilter(this);
        grid_->addWidget(caption, 0, column);
        grid_->addWidget(field.edit, 1, column++);
    }
    const auto on = [this](ValueEdit* edit, auto act) {
        connect(edit, &QLineEdit::editingFinished, this, [edit, act] {
            const bool typed = edit->isModified();
            edit->setModified(false);
            if (typed && edit->value()) act(*edit->value());
        });
        connect(edit, &QLineEdit::returnPressed, this, [this, edit] {
            if (edit->problem().isEmpty()) emit done();
        });
    };
    on(left_, [this](double mm) { emit put(placing::Axis::x, mm); });
    on(front_, [this](double mm) { emit put(placing::Axis::y, mm); });
    on(turn_, [this](double degrees) { emit turned(degrees); });
}

void PlacementPane::show_choice(const Shown& shown) {
    if (shown == shown_) return;
    const bool other_units = !(shown.context == shown_.context);
    shown_ = shown;
    if (other_units) make_fields();
    fill();
}

void PlacementPane::fill() {
    const auto figure = [this](auto get) {
        return shown_.box ? std::optional<double>(get(*shown_.box)) : std::nullopt;
    };
    const auto set = [](ValueEdit* edit, std::optional<double> value) {
        if (edit->isModified() && edit->hasFocus()) return; // being typed into
        edit->set_value(value);
        edit->setModified(false);
    };
    set(left_, figure([](const shape::Box& box) { return box.min.x; }));
    set(front_, figure([](const shape::Box& box) { return box.min.y; }));
    set(turn_, shown_.turn_deg);
    for (auto* edit : {left_, front_, turn_}) edit->setEnabled(shown_.box && shown_.free);
    head_->set_remark(shown_.pockets == 0   ? tr("nothing chosen")
                      : !shown_.free        ? tr("locked")
                      : shown_.pockets == 1 ? QString()
                                            : tr("%1 chosen").arg(shown_.pockets));
    words_->setText(shown_.words);
    words_->setVisible(shown_.pockets == 1);
}

void PlacementPane::take_focus() {
    left_->setFocus(Qt::ShortcutFocusReason);
    left_->selectAll();
}

bool PlacementPane::eventFilter(QObject* watched, QEvent* event) {
    auto* edit = qobject_cast<ValueEdit*>(watched);
    if (edit != nullptr && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        if (!edit->isModified()) return emit done(), true;
        edit->setModified(false);
        fill();
        edit->selectAll();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace drawercast::app
