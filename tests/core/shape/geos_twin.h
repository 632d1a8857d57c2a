// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <geos_c.h>

#include <memory>

/// Areas of set operations by GEOS, on the outlines as they are (not on the grid): the twin of our own. Tests
/// only.
namespace drawercast::shape::testing {

class Geos {
  public:
    struct Deleter {
        GEOSContextHandle_t context = nullptr;
        void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context, geometry); }
    };
    using Geometry = std::unique_ptr<GEOSGeometry, Deleter>;

    Geos() : context_(GEOS_init_r()) {}
    ~Geos() { GEOS_finish_r(context_); }
    Geos(const Geos&) = delete;
    Geos& operator=(const Geos&) = delete;

    Geometry polygon(const Ring& ring) const {
        const auto n = static_cast<unsigned>(ring.size());
        GEOSCoordSequence* points = GEOSCoordSeq_create_r(context_, n + 1, 2);
        for (unsigned i = 0; i <= n; ++i)
            GEOSCoordSeq_setXY_r(context_, points, i, ring[i % n].x, ring[i % n].y);
        return own(
            GEOSGeom_createPolygon_r(context_, GEOSGeom_createLinearRing_r(context_, points), nullptr, 0));
    }
    Geometry united(const Geometry& a, const Geometry& b) const {
        return own(GEOSUnion_r(context_, a.get(), b.get()));
    }
    Geometry shared(const Geometry& a, const Geometry& b) const {
        return own(GEOSIntersection_r(context_, a.get(), b.get()));
    }
    Geometry without(const Geometry& a, const Geometry& b) const {
        return own(GEOSDifference_r(context_, a.get(), b.get()));
    }
    /// NaN where GEOS gave up.
    double area(const Geometry& geometry) const {
        double mm2 = 0;
        if (!geometry || GEOSArea_r(context_, geometry.get(), &mm2) == 0) return std::nan("");
        return mm2;
    }
    double distance(const Geometry& a, const Geometry& b) const {
        double mm = std::nan("");
        GEOSDistance_r(context_, a.get(), b.get(), &mm);
        return mm;
    }

  private:
    Geometry own(GEOSGeometry* geometry) const { return {geometry, Deleter{context_}}; }
    GEOSContextHandle_t context_;
};

} // namespace drawercast::shape::testing
