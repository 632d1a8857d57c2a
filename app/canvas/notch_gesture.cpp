// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/notch_gesture.h"

#include "job/edit.h"

namespace drawercast::app {

using layout::NotchEdge;
using shape::Vec;

std::optional<NotchGesture> NotchGesture::begin(Start start, const layout::PlacedPocket& pocket) {
    const auto found = job::find_pocket(start.job, start.subject);
    if (found.pocket == nullptr || start.notch >= found.pocket->notches.size()) return std::nullopt;
    NotchEdge edge(*pocket.form);
    if (edge.empty()) return std::nullopt;
    const job::Notch notch = found.pocket->notches[start.notch];
    return NotchGesture(std::move(start), notch, pocket.pose, std::move(edge));
}

NotchGesture::NotchGesture(Start start, const job::Notch& notch, const shape::Pose& pose, NotchEdge edge)
    : start_(std::move(start)), notch_(notch), pose_(pose), edge_(std::move(edge)),
      seat_(edge_.nearest(notch.pose.at)),
      off_(shape::Turn::of_degrees(-seat_.turn_deg)(notch.pose.at - seat_.at)) {}

Vec NotchGesture::in_object(Vec drawer_mm) const {
    return shape::Turn::of_degrees(-pose_.turn_deg)(drawer_mm - pose_.at);
}

NotchGesture::Step NotchGesture::seated(const NotchEdge::Seat& seat, bool in_the_middle) const {
    job::Notch notch = notch_;
    notch.pose.at = seat.at + shape::Turn::of_degrees(seat.turn_deg)(off_);
    notch.pose.turn_deg += seat.turn_deg - seat_.turn_deg;
    return {job::with_notch_changed(start_.job, start_.subject, start_.notch, notch),
            shape::placed(notch.pose.at, pose_), in_the_middle};
}

NotchGesture::Step NotchGesture::at(Vec pointer, double radius_mm) const {
    const Vec by = in_object(pointer) - in_object(start_.grabbed);
    const auto seat = edge_.nearest(seat_.at + by);
    for (const auto& middle : edge_.middles())
        if (shape::length(middle.at - seat.at) <= radius_mm) return seated(middle, true);
    return seated(seat, false);
}

NotchGesture::Step NotchGesture::slid(double by_mm) const { return seated(edge_.slid(seat_, by_mm), false); }

Vec NotchGesture::way() const { return shape::Turn::of_degrees(seat_.turn_deg + pose_.turn_deg)(Vec{1, 0}); }

} // namespace drawercast::app
