// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bench/dense_layout.h"

#include <geos_c.h>

#include <vector>

namespace drawercast::bench {

/// The same question asked of a general geometry library (GEOS, by its C interface): an STR tree of the
/// pockets, each prepared for distances. The outlines are made before; tree and preparation belong to a
/// recheck, since every pocket may have moved.
class LibraryRecheck {
  public:
    LibraryRecheck(const std::vector<shape::Ring>& rings, const shape::Ring& drawer)
        : context_(GEOS_init_r()) {
        for (const auto& ring : rings)
            outlines_.push_back(GEOSGeom_createPolygon_r(context_, closed(ring), nullptr, 0));
        for (const auto& ring : rings) {
            shape::Box box;
            for (const shape::Vec p : ring) box.add(p);
            box = box.grown(dense_limit_mm);
            windows_.push_back(
                GEOSGeom_createRectangle_r(context_, box.min.x, box.min.y, box.max.x, box.max.y));
        }
        drawer_ = closed(drawer);
    }
    ~LibraryRecheck() {
        for (auto* geometry : outlines_) GEOSGeom_destroy_r(context_, geometry);
        for (auto* geometry : windows_) GEOSGeom_destroy_r(context_, geometry);
        GEOSGeom_destroy_r(context_, drawer_);
        GEOS_finish_r(context_);
    }
    LibraryRecheck(const LibraryRecheck&) = delete;
    LibraryRecheck& operator=(const LibraryRecheck&) = delete;

    Tally recheck() {
        Tally tally;
        GEOSSTRtree* tree = GEOSSTRtree_create_r(context_, 10);
        std::vector<std::size_t> indices(outlines_.size());
        for (std::size_t i = 0; i < outlines_.size(); ++i) {
            indices[i] = i;
            GEOSSTRtree_insert_r(context_, tree, outlines_[i], &indices[i]);
        }
        const GEOSPreparedGeometry* drawer = GEOSPrepare_r(context_, drawer_);
        for (std::size_t i = 0; i < outlines_.size(); ++i) {
            std::vector<std::size_t> near;
            GEOSSTRtree_query_r(context_, tree, windows_[i], &collect, &near);
            const GEOSPreparedGeometry* prepared = nullptr;
            double mm = 0;
            for (const std::size_t other : near) {
                if (other <= i) continue;
                if (!prepared) prepared = GEOSPrepare_r(context_, outlines_[i]);
                GEOSPreparedDistance_r(context_, prepared, outlines_[other], &mm);
                tally.take(mm);
            }
            if (prepared) GEOSPreparedGeom_destroy_r(context_, prepared);
            GEOSPreparedDistance_r(context_, drawer, outlines_[i], &mm);
            tally.take(mm);
        }
        GEOSPreparedGeom_destroy_r(context_, drawer);
        GEOSSTRtree_destroy_r(context_, tree);
        return tally;
    }

  private:
    static void collect(void* item, void* list) {
        static_cast<std::vector<std::size_t>*>(list)->push_back(*static_cast<std::size_t*>(item));
    }
    GEOSGeometry* closed(const shape::Ring& ring) const {
        auto* points = GEOSCoordSeq_create_r(context_, static_cast<unsigned>(ring.size() + 1), 2);
        for (unsigned i = 0; i <= ring.size(); ++i)
            GEOSCoordSeq_setXY_r(context_, points, i, ring[i % ring.size()].x, ring[i % ring.size()].y);
        return GEOSGeom_createLinearRing_r(context_, points);
    }

    GEOSContextHandle_t context_;
    std::vector<GEOSGeometry*> outlines_;
    std::vector<GEOSGeometry*> windows_; ///< boxes grown by the limit, to search by
    GEOSGeometry* drawer_ = nullptr;     ///< its boundary
};

} // namespace drawercast::bench
