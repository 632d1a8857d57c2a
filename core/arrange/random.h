// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>

namespace drawercast::arrange {

/// The same row of numbers from the same seed on every machine, which the standard's distributions do not
/// promise. SplitMix64 (Steele, Lea and Flood 2014).
class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    double operator()() { return static_cast<double>(next() >> 11U) * 0x1p-53; } ///< 0 ≤ x < 1
    double between(double low, double high) { return low + (high - low) * (*this)(); }
    std::size_t below(std::size_t count) {
        return static_cast<std::size_t>((*this)() * static_cast<double>(count));
    }

  private:
    std::uint64_t next() {
        std::uint64_t z = (state_ += 0x9E3779B97F4A7C15U);
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31U);
    }
    std::uint64_t state_;
};

} // namespace drawercast::arrange
