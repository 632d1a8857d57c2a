// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/drawing_file.h"

#include "forms/dialog_buttons.h"
#include "forms/notation.h"
#include "forms/small_screen.h"
#include "language/in_words.h"
#include "language/spoken.h"
#include "outline/outline_acts.h"

#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

using language::tr;

} // namespace

Expected<job::SvgOutlines> read_drawing_file(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{"file-open", path.toStdString(), verbatim(file.errorString().toStdString()),
                       phrase("Choose another file")};
    constexpr qint64 most_bytes = 8'000'001; // one more than is read, so that the reader refuses it
    return job::svg_outlines(file.read(most_bytes).toStdString());
}

QString drawing_words(const job::SvgOutline& outline, const FormContext& context) {
    const auto notation = length_notation(context);
    const auto box = outline::box_of(outline.polygon);
    return tr("%1, %2 × %3 (%4)")
        .arg(QString::fromStdString(outline.name), notation.shown(box.width()), notation.shown(box.height()),
             in_words(outline.spot));
}

namespace {

/// Notes of a drawing under what is asked.
QString with_notes(QString words, const job::SvgOutlines& read) {
    for (const auto& note : read.notes) words += QLatin1Char('\n') + in_words(note);
    return words;
}

std::optional<job::SvgOutlines> asked_for(DrawingAsking& asking, QWidget* parent) {
    const auto path = asking.drawing_file(parent);
    if (!path) return std::nullopt;
    auto read = read_drawing_file(*path);
    if (read) return std::move(*read);
    asking.warn(parent, tr("This drawing cannot be read"), problem_line(read.error()));
    return std::nullopt;
}

/// Numbered, so that two of a name and size are two.
QStringList numbered(const job::SvgOutlines& read, const FormContext& context) {
    QStringList names;
    for (const auto& outline : read.outlines)
        names << tr("%1. %2").arg(names.size() + 1).arg(drawing_words(outline, context));
    return names;
}

} // namespace

std::optional<shape::Polygon> outline_from_drawing(const FormContext& context, DrawingAsking& asking,
                                                   QWidget* parent) {
    const auto read = asked_for(asking, parent);
    if (!read) return std::nullopt;
    if (read->outlines.size() == 1 && read->notes.empty()) return read->outlines.front().polygon;
    const auto rows = asking.outlines(parent, with_notes(tr("Which outline, largest first:"), *read),
                                      numbered(*read, context), false);
    if (!rows || rows->empty()) return std::nullopt;
    return read->outlines.at(static_cast<std::size_t>(rows->front())).polygon;
}

std::vector<job::Level> levels_from_drawing(const FormContext& context, DrawingAsking& asking,
                                            QWidget* parent) {
    const auto read = asked_for(asking, parent);
    if (!read) return {};
    const auto rows =
        asking.outlines(parent, with_notes(tr("Which outlines, each a level; largest first:"), *read),
                        numbered(*read, context), true);
    std::vector<job::Level> levels;
    shape::Box all;
    for (const int row : rows.value_or(std::vector<int>{})) {
        const auto& outline = read->outlines.at(static_cast<std::size_t>(row));
        const auto box = outline::box_of(outline.polygon);
        all.add(box.min + outline.at);
        all.add(box.max + outline.at);
        levels.push_back({job::Sunk{outline.polygon, 0}, {outline.at, 0}, {}});
    }
    for (auto& level : levels) {
        const shape::Vec at = level.pose.at - all.center();
        level.pose.at = grained_at(at);
    }
    return levels;
}

std::optional<QString> DrawingDialogs::drawing_file(QWidget* parent) {
    const QString path =
        QFileDialog::getOpenFileName(parent, tr("Outline from an SVG file"), {}, tr("Drawings (*.svg)"));
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

void DrawingDialogs::warn(QWidget* parent, const QString& title, const QString& words) {
    QMessageBox::warning(parent, title, words);
}

std::optional<std::vector<int>> DrawingDialogs::outlines(QWidget* parent, const QString& words,
                                                         const QStringList& names, bool several) {
    QDialog dialog(parent);
    dialog.setWindowTitle(tr("Outline from an SVG file"));
    auto* column = new QVBoxLayout(&dialog);
    auto* label = new QLabel(words, &dialog);
    label->setWordWrap(true);
    auto* list = new QListWidget(&dialog);
    list->addItems(names);
    list->setAccessibleName(tr("Outlines of the drawing"));
    list->setSelectionMode(several ? QAbstractItemView::ExtendedSelection
                                   : QAbstractItemView::SingleSelection);
    list->setCurrentRow(0);
    auto* buttons = dialog_buttons(dialog, QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
    QObject::connect(list, &QListWidget::itemActivated, &dialog, &QDialog::accept);
    column->addWidget(label);
    column->addWidget(list, 1);
    if (several) column->addWidget(new QLabel(tr("Ctrl or Shift with a click chooses several."), &dialog));
    column->addWidget(buttons);
    fit_screen(dialog, {460, 360});
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    std::vector<int> rows;
    for (int i = 0; i < list->count(); ++i)
        if (list->item(i)->isSelected()) rows.push_back(i);
    return rows;
}

} // namespace drawercast::app
