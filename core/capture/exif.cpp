// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/exif.h"

#include <cstddef>
#include <cstdint>

namespace drawercast::capture {

namespace {

constexpr std::uint32_t tag_orientation = 0x0112, tag_exif_entries = 0x8769, tag_focal_as_35mm = 0xA405;
constexpr std::uint32_t type_short = 3, type_long = 4;

/// Bytes of either order, read where they are there.
class Tiff {
  public:
    explicit Tiff(std::string_view bytes) : bytes_(bytes), little_(bytes.substr(0, 2) == "II") {}

    std::optional<std::uint32_t> number(std::size_t at, std::size_t size) const {
        if (at > bytes_.size() || bytes_.size() - at < size) return std::nullopt;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            const std::size_t from = little_ ? at + size - 1 - i : at + i;
            value = (value << 8) | static_cast<unsigned char>(bytes_[from]);
        }
        return value;
    }

    /// The single short or long value of `tag` in the list of entries at `list`.
    std::optional<std::uint32_t> entry(std::size_t list, std::uint32_t tag) const {
        const auto count = number(list, 2);
        if (!count) return std::nullopt;
        for (std::size_t i = 0; i < *count; ++i) {
            const std::size_t at = list + 2 + 12 * i;
            const auto found = number(at, 2);
            if (!found) return std::nullopt;
            if (*found != tag) continue;
            const auto type = number(at + 2, 2);
            if (type == type_short) return number(at + 8, 2);
            if (type == type_long) return number(at + 8, 4);
            return std::nullopt;
        }
        return std::nullopt;
    }

  private:
    std::string_view bytes_;
    bool little_;
};

} // namespace

Exif exif(std::string_view bytes) {
    const Tiff tiff(bytes);
    Exif out;
    if (bytes.substr(0, 2) != "II" && bytes.substr(0, 2) != "MM") return out;
    if (tiff.number(2, 2) != 42u) return out;
    const auto first = tiff.number(4, 4);
    if (!first) return out;
    const auto orientation = tiff.entry(*first, tag_orientation);
    if (orientation && *orientation >= 1 && *orientation <= 8)
        out.orientation = static_cast<int>(*orientation);
    const auto more = tiff.entry(*first, tag_exif_entries);
    if (!more) return out;
    const auto focal = tiff.entry(*more, tag_focal_as_35mm);
    if (focal && *focal >= 8 && *focal <= 1200) out.focal_as_35mm = static_cast<double>(*focal);
    return out;
}

} // namespace drawercast::capture
