// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/demo.h"

#include "base/demand.h"
#include "job/edit.h"
#include "job/read.h"

#include <QFile>

// Resources of a library are known once this has run; it must stand outside of any namespace.
static void load_demo() { Q_INIT_RESOURCE(demo); }

namespace drawercast::app::guide {

namespace {

const layout::Check* thin_wall(const plan::DrawerPlan& drawer) {
    for (const auto& check : drawer.checks)
        if (check.code == layout::Code::wall_thin) return &check;
    return nullptr;
}

std::optional<Demo::Thin> thin_wall_in(const job::Job& job) {
    constexpr double step_mm = 4;
    plan::Planner planner;
    for (const auto& pocket : job.drawers.front()->pockets)
        for (const auto& by : {shape::Vec{step_mm, 0}, {-step_mm, 0}, {0, step_mm}, {0, -step_mm}}) {
            auto moved = job::moved(job, {job::subject_of(pocket)}, {by.x, by.y});
            auto plan = planner.fast(moved);
            if (const auto* check = thin_wall(plan.drawers.front()); check != nullptr && check->at)
                return Demo::Thin{std::move(moved), plan, *check};
        }
    return std::nullopt;
}

} // namespace

ExpectedAll<job::Job> read_demo(const QString& name) {
    load_demo();
    QFile file(QStringLiteral(":/demo/%1.drawercast.json").arg(name));
    const bool opened = file.open(QIODevice::ReadOnly);
    DRAWERCAST_DEMAND(opened, "the demo job is part of the program");
    const auto bytes = file.readAll();
    return job::read_job(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

job::Job demo_job(job::DisplayUnits units) {
    auto job = read_demo(QStringLiteral("field-service"));
    DRAWERCAST_DEMAND(job.has_value(), "the demo job can be read");
    job->drawers.resize(1); // each further one would cost its seconds
    return job::in_units(std::move(*job), units);
}

Demo::Demo(job::Job job, QObject* parent) : QObject(parent) {
    document_.replace(std::move(job), {}, true);
    connect(&document_.building(), &Building::built, this, &Demo::changed, Qt::QueuedConnection);
}

void Demo::set_units(job::DisplayUnits units) {
    if (units == job().display_units) return;
    document_.replace(job::in_units(job(), units), {}, true);
    looked_ = false;
    emit changed();
}

const plan::Plan& Demo::plan() const {
    return document_.last_built() ? *document_.last_built() : document_.plan();
}

void Demo::wait() { document_.building().wait(); }

const std::optional<Demo::Thin>& Demo::thin() const {
    if (!looked_) thin_ = thin_wall_in(job());
    looked_ = true;
    return thin_;
}

} // namespace drawercast::app::guide
