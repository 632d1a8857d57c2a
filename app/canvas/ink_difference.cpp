// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/ink_difference.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace drawercast::app {

namespace {

using Run = std::vector<const sheets::Ink*>;

std::map<std::string, Run> by_subject(const sheets::Inks& inks) {
    std::map<std::string, Run> runs;
    Run* run = &runs[{}];
    for (const auto& ink : inks) {
        if (const auto* about = std::get_if<sheets::About>(&ink))
            run = &runs[about->subject];
        else
            run->push_back(&ink);
    }
    return runs;
}

bool same(const sheets::Ink* a, const sheets::Ink* b) { return *a == *b; }

/// Rectangles of inks in their order. Those of one badge or plate lie on each other and become one: a region
/// of few is clipped to sooner.
class Reaches {
  public:
    void add(const QRect& reach) {
        if (reach.isEmpty()) return;
        constexpr double little_more = 1.25;
        const QRect both = last_.united(reach);
        if (!last_.isEmpty() && area(both) <= little_more * (area(last_) + area(reach))) {
            last_ = both;
        } else {
            region_ += last_;
            last_ = reach;
        }
    }
    QRegion region() const { return region_ + last_; }

  private:
    static double area(const QRect& rect) { return double(rect.width()) * rect.height(); }

    QRegion region_;
    QRect last_;
};

/// What lies between the beginnings and ends that agree.
QRegion changed(const Run& before, const Run& after) {
    const auto first = std::mismatch(before.begin(), before.end(), after.begin(), after.end(), same);
    const auto last = std::mismatch(before.rbegin(), std::make_reverse_iterator(first.first), after.rbegin(),
                                    std::make_reverse_iterator(first.second), same);
    Reaches reaches;
    for (auto it = first.first; it != last.first.base(); ++it) reaches.add(pixels_of(**it));
    for (auto it = first.second; it != last.second.base(); ++it) reaches.add(pixels_of(**it));
    return reaches.region();
}

} // namespace

QRect pixels_of(const sheets::Ink& ink) {
    constexpr double blur_px = 1.5; // smoothed edges, and hinted letters
    const auto box = sheets::reach_of(ink);
    if (box.empty()) return {};
    return QRectF(QPointF(box.min.x, box.min.y), QPointF(box.max.x, box.max.y))
        .adjusted(-blur_px, -blur_px, blur_px, blur_px)
        .toAlignedRect();
}

QRegion changed_region(const sheets::Inks& before, const sheets::Inks& after) {
    const auto then = by_subject(before);
    const auto now = by_subject(after);
    static const Run nothing;
    QRegion region;
    for (const auto& [subject, run] : then) {
        const auto found = now.find(subject);
        region += changed(run, found == now.end() ? nothing : found->second);
    }
    for (const auto& [subject, run] : now)
        if (then.count(subject) == 0) region += changed(nothing, run);
    return region;
}

} // namespace drawercast::app
