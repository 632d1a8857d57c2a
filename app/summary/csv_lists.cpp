// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/csv_lists.h"

#include "base/units.h"
#include "job/edit.h"
#include "job/shown_name.h"
#include "plan/sentences.h"
#include "plan/stock_stage.h"

#include "language/goods.h"
#include "language/in_words.h"
#include "language/spoken.h"
#include "sheets/check_words.h"
#include "sheets/part_words.h"
#include "sheets/text.h"
#include "summary/cut_tables.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace drawercast::summary {

namespace {

using language::tr;
using sheets::text;

QString field(QString words) {
    if (!words.contains(QRegularExpression(QStringLiteral("[\",\r\n]")))) return words;
    return QLatin1Char('"') + words.replace(QLatin1Char('"'), QStringLiteral("\"\"")) + QLatin1Char('"');
}

/// Rows of fields, and how figures are written in this job.
class Rows {
  public:
    explicit Rows(const job::Job& job) : metric_(job.display_units == job::DisplayUnits::mm) {}

    void add(const QStringList& fields) {
        QStringList written;
        for (const QString& one : fields) written << field(one);
        bytes_ += written.join(QLatin1Char(',')).toUtf8() + "\r\n";
    }
    QString length(double mm) const {
        return figure(metric_ ? mm : mm / units::mm_per_inch, metric_ ? 3 : 4);
    }
    QString mass(double g) const { return figure(metric_ ? g : g / units::g_per_pound, metric_ ? 1 : 4); }
    static QString figure(double value, int decimals) {
        QString words = QString::number(value, 'f', decimals);
        while (words.contains(QLatin1Char('.')) && (words.endsWith(QLatin1Char('0')))) words.chop(1);
        if (words.endsWith(QLatin1Char('.'))) words.chop(1);
        return words == QStringLiteral("-0") ? QStringLiteral("0") : words;
    }
    QString length_head(const QString& name) const {
        return metric_ ? tr("%1 (mm)").arg(name) : tr("%1 (in)").arg(name);
    }
    QString mass_head(const QString& name) const {
        return metric_ ? tr("%1 (g)").arg(name) : tr("%1 (lb)").arg(name);
    }
    QByteArray take() { return std::move(bytes_); }

  private:
    bool metric_;
    QByteArray bytes_;
};

shape::Box box_of(const job::Object& object) {
    shape::Box box;
    for (const auto& level : object.levels) {
        if (const auto* lying = std::get_if<job::Lying>(&level.form)) {
            double length = 0, across = 0;
            for (const auto& one : lying->cylinders) {
                length += one.length_mm;
                across = std::max(across, one.diameter_mm);
            }
            const auto contour = shape::contour_of(shape::Rectangle{length, across, 0});
            if (contour) box.add(shape::bounds(shape::placed(*contour, level.pose)));
            continue;
        }
        const auto* sunk = std::get_if<job::Sunk>(&level.form);
        const auto contour =
            shape::contour_of(sunk != nullptr ? sunk->outline : std::get<job::Through>(level.form).outline);
        if (contour) box.add(shape::bounds(shape::placed(*contour, level.pose)));
    }
    return box;
}

QByteArray objects(const job::Job& job) {
    Rows rows(job);
    rows.add({tr("name"), rows.length_head(tr("length")), rows.length_head(tr("width")),
              rows.length_head(tr("height")), rows.mass_head(tr("mass")), tr("count"), tr("placed"),
              tr("note")});
    for (const auto& object : job.objects) {
        int placed = 0;
        for (const auto& drawer : job.drawers)
            placed += static_cast<int>(
                std::count_if(drawer->pockets.begin(), drawer->pockets.end(),
                              [&](const job::Pocket& pocket) { return pocket.object == object->id; }));
        const auto box = box_of(*object);
        rows.add({text(object->name), box.empty() ? QString() : rows.length(box.width()),
                  box.empty() ? QString() : rows.length(box.height()), rows.length(object->height_mm),
                  rows.mass(object->mass_g), QString::number(object->count), QString::number(placed),
                  text(object->note)});
    }
    return rows.take();
}

QString drawer_name(const job::Job& job, const std::string& id) { return text(job::shown_name(job, id)); }

QByteArray pockets(const job::Job& job, const plan::Plan& plan) {
    Rows rows(job);
    rows.add({tr("drawer"), tr("pocket"), rows.length_head(tr("left edge")),
              rows.length_head(tr("front edge")), rows.length_head(tr("wide")),
              rows.length_head(tr("deep, front to back")), tr("turn (°)"), rows.length_head(tr("depth")),
              tr("locked")});
    for (const auto& drawer : plan.drawers)
        for (const auto& pocket : drawer.pockets) {
            const auto found = job::find_pocket(job, pocket->subject);
            const auto& box = pocket->box;
            rows.add({drawer_name(job, drawer.id), text(plan::subject_name(pocket->subject, job)),
                      rows.length(box.min.x), rows.length(box.min.y), rows.length(box.width()),
                      rows.length(box.height()), Rows::figure(pocket->pose.turn_deg, 3),
                      rows.length(pocket->form->greatest_depth_mm),
                      found.pocket != nullptr && found.pocket->locked ? tr("yes") : tr("no")});
        }
    return rows.take();
}

QByteArray checks(const job::Job& job, const plan::Plan& plan) {
    Rows rows(job);
    rows.add({tr("drawer"), tr("severity"), tr("check"), tr("what it concerns"), tr("what"), tr("what to do"),
              tr("left as is")});
    const auto add = [&](const QString& drawer, const layout::Check& check) {
        rows.add({drawer, sheets::severity_words(check.severity),
                  text(std::string(layout::text_of(check.code))), text(plan::subjects_text(check, job)),
                  in_words(plan::title(check, job)), in_words(plan::advice(check, job)),
                  check.left_as_is ? tr("yes") : tr("no")});
    };
    for (const auto& drawer : plan.drawers)
        for (const auto& check : drawer.checks) add(drawer_name(job, drawer.id), check);
    for (const auto& check : plan.checks) add(tr("the job"), check);
    return rows.take();
}

QByteArray cuts(const job::Job& job, const plan::StockPlan& stock) {
    Rows rows(job);
    rows.add({tr("drawer"), tr("part"), tr("from"), rows.length_head(tr("length")),
              rows.length_head(tr("width")), rows.length_head(tr("thickness"))});
    for (const auto& part : stock.parts)
        rows.add({drawer_name(job, part.drawer), sheets::part_words(part.label),
                  language::goods_name(part.board), rows.length(part.length_mm), rows.length(part.width_mm),
                  rows.length(part.thickness_mm)});
    for (const auto& part : stock.lengths)
        rows.add({drawer_name(job, part.drawer),
                  sheets::part_words(part.label),
                  language::goods_name(part.stock),
                  rows.length(part.length_mm),
                  {},
                  {}});
    return rows.take();
}

QByteArray purchases(const job::Job& job, const plan::Plan& plan) {
    Rows rows(job);
    rows.add({tr("what"), tr("needed"), tr("at hand"), tr("buy"), tr("price")});
    const auto price = [](double amount) { return amount > 0 ? Rows::figure(amount, 2) : QString(); };
    for (const auto& line : plan.stock->buy)
        rows.add({language::goods_name(line.name), QString::number(line.needed),
                  QString::number(line.at_hand), QString::number(line.buy), price(line.price)});
    for (const auto& line : plan.stock->supplies) {
        const QString name = words_of(line.supply) + QStringLiteral(", ") + text(line.unit);
        if (const auto& packages = line.packages)
            rows.add({tr("%1, in packages of %2").arg(name, Rows::figure(packages->amount, 2)),
                      Rows::figure(line.amount, 2), Rows::figure(packages->at_hand, 2),
                      QString::number(packages->buy), price(packages->price)});
        else
            rows.add({name, Rows::figure(line.amount, 2), {}, {}, {}});
    }
    if (plan.purchase)
        for (const auto& kit : plan.purchase->kits)
            rows.add({language::goods_name(kit.name),
                      QString::number(kit.count),
                      {},
                      QString::number(kit.count),
                      {}});
    return rows.take();
}

} // namespace

std::vector<CsvList> csv_lists(const job::Job& job, const plan::Plan& plan) {
    std::vector<CsvList> lists{{QStringLiteral("objects"), objects(job)},
                               {QStringLiteral("pockets"), pockets(job, plan)},
                               {QStringLiteral("checks"), checks(job, plan)}};
    if (plan.stock) {
        lists.push_back({QStringLiteral("cuts"), cuts(job, *plan.stock)});
        lists.push_back({QStringLiteral("buy"), purchases(job, plan)});
    }
    return lists;
}

} // namespace drawercast::summary
