// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/fingerprint.h"

#include "job/write.h"

#include <array>

namespace drawercast::job {

unsigned long long fnv1a_64(const std::string& bytes) {
    constexpr unsigned long long offset = 0xcbf29ce484222325ULL, prime = 0x100000001b3ULL;
    unsigned long long hash = offset;
    for (const char byte : bytes) hash = (hash ^ static_cast<unsigned char>(byte)) * prime;
    return hash;
}

std::string fingerprint(const Job& job) {
    Job said = job;
    said.log.clear(); // a pour that is marked makes no print-out old
    const unsigned long long hash = fnv1a_64(write_job(said));
    constexpr int digits = 6, bits = 24;
    unsigned long long folded = (hash ^ (hash >> bits) ^ (hash >> (2 * bits))) & 0xffffffULL;
    constexpr std::array hex{'0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'};
    std::string text(digits, '0');
    for (int i = digits; i-- > 0; folded >>= 4) text[static_cast<std::size_t>(i)] = hex[folded & 15];
    return text;
}

std::string drawer_fingerprint(const Job& job, std::string_view drawer) {
    Job said = job;
    said.revision = 0;
    std::erase_if(said.drawers, [&](const auto& one) { return one->id != drawer; });
    std::erase_if(said.objects, [&](const auto& object) {
        for (const auto& one : said.drawers)
            for (const Pocket& pocket : one->pockets)
                if (pocket.object == object->id) return false;
        return true;
    });
    std::erase_if(said.left_as_is, [&](const auto& one) { return one.drawer != drawer; });
    std::erase_if(said.as_built, [&](const auto& one) { return one.drawer != drawer; });
    said.casts.clear(); // what came out changes no paper
    return fingerprint(said);
}

} // namespace drawercast::job
