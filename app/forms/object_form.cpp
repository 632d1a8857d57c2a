// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/object_form.h"

#include "layout/pocket.h"

#include "forms/drawing_file.h"
#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/level_edit.h"
#include "forms/object_picture.h"
#include "forms/part_tabs.h"
#include "theme/icons.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr int most_levels = 4;
constexpr int most_name = 200;

/// What the reader has against an object, paths within it.
FieldProblems reader_problems(job::Object object) {
    if (object.id.empty()) object.id = "i1";
    job::Job job;
    job.objects.emplace_back(std::move(object));
    return problems_of(job, "/objects/0");
}

} // namespace

job::Object blank_object() {
    job::Object object;
    object.levels = {{job::Sunk{shape::Rectangle{}, 0}, {}, {}}};
    return object;
}

ObjectForm::ObjectForm(Purpose purpose, const job::Object& object, const FormContext& context,
                       QWidget* parent)
    : FormDialog(purpose == Purpose::add ? tr("New object") : tr("Object"),
                 purpose == Purpose::add ? tr("Add object") : tr("Keep changes"), context, parent),
      given_(object), rows_(new FieldRows), more_(new FieldRows), name_(new QLineEdit),
      height_(new LengthEdit(context, job::range_of("/objects/*/height_mm"))), turns_(new QComboBox),
      note_(new QPlainTextEdit),
      levels_(
          new PartTabs({tr("Level %1"), tr("Add a level"), tr("Take this level away"), {}}, 1, most_levels)),
      picture_(new ObjectPicture(context)) {
    auto* body = new QWidget;
    auto* columns = new QHBoxLayout(body);
    columns->setSpacing(16);
    columns->addWidget(make_left(), 3);
    for (const auto& level : given_.levels) add_level(level); // before what follows them by the Tab key
    if (!given_.levels.empty()) levels_->show_page(levels_->pages().front());
    columns->addWidget(make_right(), 2);
    fill();
    set_body(body);
    show_picture();
    name_->setFocus();
}

QWidget* ObjectForm::make_left() {
    auto* left = new QWidget;
    auto* all = new QVBoxLayout(left);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(8);
    all->addWidget(make_rows());
    levels_->add_to_head(make_from_drawing());
    all->addWidget(levels_, 1);
    return left;
}

/// What most objects leave as it is comes last, by keyboard too: name, sizes, done.
QWidget* ObjectForm::make_right() {
    auto* right = new QWidget;
    auto* all = new QVBoxLayout(right);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(8);
    all->addWidget(picture_, 1);
    all->addWidget(make_more());
    return right;
}

FieldRows* ObjectForm::make_rows() {
    name_->setMaxLength(most_name);
    rows_->add_wide("/name", tr("&Name"), name_);
    using Object = job::Object;
    auto* count = new ValueEdit(number_notation(context(), {}), job::range_of("/objects/*/count"));
    auto* mass =
        new ValueEdit(quantity_notation(Quantity::mass_g, context()), job::range_of("/objects/*/mass_g"));
    numbers_.add(*rows_, {"/count", tr("&How many"), count, &Object::count});
    numbers_.add(*rows_, {"/mass_g", tr("&Mass of one"), mass, &Object::mass_g});
    numbers_.add(*rows_,
                 {"/height_mm", tr("H&eight"), height_, &Object::height_mm, tr("Of the whole object")});
    connect(rows_, &FieldRows::edited, this, &ObjectForm::refresh);
    connect(name_, &QLineEdit::textEdited, this, &ObjectForm::refresh);
    connect(levels_, &PartTabs::taken_away, this, &ObjectForm::refresh);
    connect(levels_, &PartTabs::asked_for_another, this, [this] {
        add_level(blank_object().levels.front());
        refresh();
    });
    return rows_;
}

FieldRows* ObjectForm::make_more() {
    using Object = job::Object;
    auto* fit = new LengthEdit(context(), job::range_of("/objects/*/fit_mm"));
    auto* fit_end = new LengthEdit(context(), job::range_of("/objects/*/fit_end_mm"));
    auto* volume = new ValueEdit(quantity_notation(Quantity::volume_ml, context()),
                                 job::range_of("/objects/*/volume_ml"));
    const auto automatic = layout::fit_of(Object{}, context().firmness);
    fit->allow_empty(tr("auto: %1").arg(length_notation(context()).shown(automatic.side_mm)));
    fit_end->allow_empty(tr("as the sides"));
    volume->allow_empty(tr("from the levels"));
    numbers_.add(*more_, {"/fit_mm", tr("&Fit a side"), fit, &Object::fit_mm, tr("Less than 0 squeezes")});
    numbers_.add(*more_, {"/fit_end_mm", tr("F&it at the ends"), fit_end, &Object::fit_end_mm,
                          tr("Ends of the long axis")});
    numbers_.add(*more_, {"/volume_ml", tr("&Volume, dunked"), volume, &Object::volume_ml,
                          tr("Dunked as far as it sits in the foam")});
    note_->setTabChangesFocus(true);
    note_->setFixedHeight(2 * note_->fontMetrics().lineSpacing() + 12);
    turns_->addItem(tr("By quarters"), static_cast<int>(job::Turns::quarter));
    turns_->addItem(tr("End for end"), static_cast<int>(job::Turns::half));
    turns_->addItem(tr("At any angle"), static_cast<int>(job::Turns::free));
    turns_->addItem(tr("Never"), static_cast<int>(job::Turns::none));
    turns_->setToolTip(tr("By Arrange; by hand any turn can be given"));
    more_->add_wide("/turns", tr("T&urned when arranged"), turns_);
    more_->add_wide("/note", tr("No&te"), note_);
    connect(more_, &FieldRows::edited, this, &ObjectForm::refresh);
    connect(turns_, &QComboBox::activated, this, &ObjectForm::refresh);
    connect(note_, &QPlainTextEdit::textChanged, this, &ObjectForm::refresh);
    return more_;
}

void ObjectForm::add_level(const job::Level& level) {
    auto* edit = new LevelEdit(level, context());
    connect(edit, &LevelEdit::edited, this, &ObjectForm::refresh);
    levels_->add_page(edit);
}

QPushButton* ObjectForm::make_from_drawing() {
    from_drawing_ = new QPushButton(theme::icon(QStringLiteral("from-svg")), tr("Levels f&rom SVG…"));
    from_drawing_->setToolTip(
        tr("Several outlines of one drawing, each a level, in their places to each other"));
    from_drawing_->setAutoDefault(false);
    connect(from_drawing_, &QPushButton::clicked, this, &ObjectForm::add_drawn_levels);
    return from_drawing_;
}

/// A level of no size yet gives way to them.
void ObjectForm::add_drawn_levels() {
    DrawingDialogs dialogs;
    DrawingAsking& asking = context().drawing_asking != nullptr ? *context().drawing_asking : dialogs;
    auto drawn = levels_from_drawing(context(), asking, this);
    if (drawn.empty()) return;
    const auto edits = level_edits();
    const auto first = edits.empty() ? std::nullopt : edits.front()->level();
    const bool blank = edits.size() == 1 && (!first || !edits.front()->own_problems().empty());
    const std::size_t room = most_levels - (blank ? 0 : edits.size());
    if (drawn.size() > room) {
        drawn.resize(room);
        asking.warn(
            this, tr("Too many levels"),
            tr("An object has up to %1 levels: the smallest outlines were left out.").arg(most_levels));
    }
    for (const auto& level : drawn) add_level(level);
    if (blank) levels_->take_page(edits.front());
    if (!levels_->pages().isEmpty()) levels_->show_page(levels_->pages().front());
    refresh();
}

void ObjectForm::fill() {
    const QSignalBlocker quiet(note_);
    name_->setText(QString::fromStdString(given_.name));
    numbers_.fill(given_);
    // Every object has one: 0 says that nobody has measured it, and no check could see it stand too high.
    if (!(given_.height_mm > 0)) height_->set_value(std::nullopt);
    turns_->setCurrentIndex(turns_->findData(static_cast<int>(given_.turns)));
    note_->setPlainText(QString::fromStdString(given_.note));
}

std::vector<LevelEdit*> ObjectForm::level_edits() const {
    std::vector<LevelEdit*> edits;
    for (QWidget* page : levels_->pages()) edits.push_back(qobject_cast<LevelEdit*>(page));
    return edits;
}

std::optional<job::Object> ObjectForm::typed() const {
    job::Object object = given_;
    if (!numbers_.take(object)) return std::nullopt;
    object.name = name_->text().toStdString();
    object.turns = static_cast<job::Turns>(turns_->currentData().toInt());
    object.note = note_->toPlainText().toStdString();
    object.levels.clear();
    for (const LevelEdit* edit : level_edits()) {
        const auto level = edit->level();
        if (!level) return std::nullopt;
        object.levels.push_back(*level);
    }
    return object;
}

std::optional<job::Object> ObjectForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems ObjectForm::show_problems() {
    const auto object = typed();
    FieldProblems of_reader = object ? reader_problems(*object) : FieldProblems{};
    FieldProblems shown;
    const auto edits = level_edits();
    std::vector<FieldProblems> of_levels;
    for (std::size_t i = 0; i < edits.size(); ++i) {
        FieldProblems mine = edits[i]->own_problems();
        const auto read = taken_below(of_reader, "/levels/" + std::to_string(i));
        mine.insert(mine.end(), read.begin(), read.end());
        of_levels.push_back(std::move(mine));
    }
    FieldProblems of_rows = rows_->own_problems();
    const FieldProblems of_more = more_->own_problems();
    of_rows.insert(of_rows.end(), of_more.begin(), of_more.end());
    if (name_->text().trimmed().isEmpty())
        of_rows.insert(of_rows.begin(), {"/name", tr("Give it a name to be found by")});
    of_rows.insert(of_rows.end(), of_reader.begin(), of_reader.end());
    FieldProblems left = more_->show(rows_->show(of_rows, shown), shown);
    for (std::size_t i = 0; i < edits.size(); ++i) {
        const FieldProblems of_none = edits[i]->show(of_levels[i], shown);
        left.insert(left.end(), of_none.begin(), of_none.end());
        levels_->set_to_mend(int(i), !of_levels[i].empty());
    }
    shown.insert(shown.end(), left.begin(), left.end());
    show_picture();
    return shown;
}

/// Levels as they were last readable, so that the picture follows the typing and does not flicker.
void ObjectForm::show_picture() {
    job::Object object = given_;
    object.height_mm = height_->value().value_or(0);
    object.levels.clear();
    for (const LevelEdit* edit : level_edits()) object.levels.push_back(edit->last_read());
    picture_->set_object(object);
}

} // namespace drawercast::app
