// SPDX-License-Identifier: GPL-3.0-or-later
#include "outline/drawing_file.h"

#include "forms/notation.h"
#include "outline/outline_acts.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QInputDialog>
#include <QMessageBox>

namespace drawercast::app {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("DrawingFile", text); }

} // namespace

Expected<job::SvgOutlines> read_drawing_file(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{"file-open", path.toStdString(), file.errorString().toStdString(),
                       "Choose another file"};
    constexpr qint64 most_bytes = 8'000'001; // one more than is read, so that the reader refuses it
    return job::svg_outlines(file.read(most_bytes).toStdString());
}

QString drawing_words(const job::SvgOutline& outline, const FormContext& context) {
    const auto notation = length_notation(context);
    const auto box = outline::box_of(outline.polygon);
    return tr("%1, %2 × %3 (%4)")
        .arg(QString::fromStdString(outline.name), notation.shown(box.width()), notation.shown(box.height()),
             QString::fromStdString(outline.where));
}

std::optional<shape::Polygon> outline_from_drawing(const FormContext& context, QWidget* parent) {
    const QString path =
        QFileDialog::getOpenFileName(parent, tr("Outline from an SVG file"), {}, tr("Drawings (*.svg)"));
    if (path.isEmpty()) return std::nullopt;
    const auto read = read_drawing_file(path);
    if (!read) {
        QMessageBox::warning(parent, tr("This drawing cannot be read"),
                             QString::fromStdString(one_line(read.error())));
        return std::nullopt;
    }
    QStringList names;
    for (const auto& outline : read->outlines) // numbered, so that two of a name and size are two
        names << tr("%1. %2").arg(names.size() + 1).arg(drawing_words(outline, context));
    QString words = tr("Which outline, largest first:");
    for (const auto& note : read->notes) words += QStringLiteral("\n") + QString::fromStdString(note);
    bool taken = true;
    QString chosen = names.front();
    if (names.size() > 1 || !read->notes.empty())
        chosen =
            QInputDialog::getItem(parent, tr("Outline from an SVG file"), words, names, 0, false, &taken);
    if (!taken) return std::nullopt;
    return read->outlines[static_cast<std::size_t>(names.indexOf(chosen))].polygon;
}

} // namespace drawercast::app
