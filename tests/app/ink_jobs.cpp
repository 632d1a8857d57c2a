// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ink_jobs.h"

#include "job/catalog.h"
#include "job/edit.h"
#include "plan/plan.h"

#include "print/pdf.h"
#include "source_dir.h"

#include <gtest/gtest.h>

namespace drawercast::test {

job::Job asymmetric_job(double width_mm, double depth_mm) {
    job::Job job = job::new_job({width_mm, depth_mm, 90, 60});
    job.title = "Ink";
    for (const auto& [id, diameter] : {std::pair("large", 50.0), std::pair("small", 30.0)}) {
        job::Object object;
        object.id = id;
        object.name = id;
        object.fit_mm = 0;
        object.levels = {{job::Sunk{shape::Circle{diameter}, 20}, {}, {}}};
        job = job::with_object(std::move(job), object);
    }
    job = job::placed(std::move(job), "d1", "large", {{60, 60}, 0});
    return job::placed(std::move(job), "d1", "small", {{140, 60}, 0});
}

job::Job demo_job(const std::string& name) {
    auto job =
        job::load_job(std::string(DRAWERCAST_SOURCE_DIR "/resources/demo/") + name + ".drawercast.json");
    if (job) return *std::move(job);
    ADD_FAILURE() << one_line(job.error().front());
    return {};
}

job::Job crowded_job() {
    job::Job job = demo_job("field-service");
    job.minimums.wall_mm = 17;
    job.minimums.edge_mm = 14;
    return job;
}

std::vector<InkPage> printed(const job::Job& job, const print::TemplateChoice& choice) {
    return printed(job, plan::compute(job), choice);
}

std::vector<InkPage> printed(const job::Job& job, const plan::Plan& plan,
                             const print::TemplateChoice& choice) {
    const auto pages =
        print::template_pages(job, plan, choice, {QStringLiteral("Drawercast"), QStringLiteral("today")});
    return read_pdf(print::pdf_of(pages, QStringLiteral("t"), QStringLiteral("p")));
}

} // namespace drawercast::test
