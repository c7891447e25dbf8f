// Reading progress: how far a file is read, for whoever waits.
#pragma once

#include <cstddef>
#include <functional>

namespace saddlerule {

/// Called now and then while a file is read, with bytes of its text.
using ReadingProgress = std::function<void(std::size_t done, std::size_t total)>;

/// Tells of every further step of a text, so that whoever is told is not called for each entry.
class ProgressTeller {
public:
    ProgressTeller(const ReadingProgress& tell, std::size_t total) : tell_(tell), total_(total) {}

    void reached(std::size_t done) {
        if (!tell_ || done < next_)
            return;
        tell_(done, total_);
        next_ = done + step;
    }

private:
    static constexpr std::size_t step = 64 * std::size_t{1024};

    const ReadingProgress& tell_;
    std::size_t total_;
    std::size_t next_ = step;
};

} // namespace saddlerule
