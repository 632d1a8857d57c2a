// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/side_by_side.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <future>
#include <mutex>
#include <thread>
#include <vector>

namespace drawercast {

void side_by_side(std::size_t count, const std::function<void(std::size_t)>& work) {
    std::atomic<std::size_t> next{0};
    std::mutex lock; // of the fault
    std::exception_ptr fault;
    const auto take = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            try {
                work(i);
            } catch (...) {
                const std::lock_guard hold(lock);
                if (!fault) fault = std::current_exception();
            }
        }
    };
    const std::size_t cores = std::max(1u, std::thread::hardware_concurrency());
    std::vector<std::future<void>> others; // each waits for its thread when it goes
    for (std::size_t i = 1; i < std::min(cores, count); ++i)
        others.push_back(std::async(std::launch::async, take));
    take();
    for (auto& other : others) other.get();
    if (fault) std::rethrow_exception(fault);
}

} // namespace drawercast
