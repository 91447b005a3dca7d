#pragma once
/// \file
/// The bells of an invented device: they ring when told, and write down what they would have shown.

#include "platform/notifications/bells.h"

#include <algorithm>
#include <optional>

namespace ebbline::screens {

class SpokenBells final : public notifications::Bells {
public:
    void setWords(const notifications::BellWords& words) override { said = words; }
    void allow(bool ring) override
    {
        allowed = ring;
        Q_EMIT leaveChanged();
    }
    void ringNow() override
    {
        ++tries;
        if (refuses)
            Q_EMIT failed();
        else
            Q_EMIT rang();
    }
    aftercare::Leave leave() const override
    {
        if (!there)
            return aftercare::Leave::noBell;
        if (!allowed)
            return aftercare::Leave::notAsked;
        return *allowed ? aftercare::Leave::granted : aftercare::Leave::denied;
    }
    std::size_t capacity() const override { return 500; }
    Result<std::vector<aftercare::Booking>> pending() const override { return booked; }
    Done book(const aftercare::Booking& booking) override
    {
        booked.insert(std::upper_bound(booked.begin(), booked.end(), booking), booking);
        return {};
    }
    Done cancel(const aftercare::Booking& booking) override
    {
        std::erase(booked, booking);
        return {};
    }

    bool isPunctual() const override { return punctual; }
    void askPunctual() override { ++punctualAsked; }

    bool there = true;
    bool punctual = true;
    int punctualAsked = 0;
    bool refuses = false;
    std::optional<bool> allowed;
    notifications::BellWords said;
    std::vector<aftercare::Booking> booked;
    int tries = 0;
};

}  // namespace ebbline::screens
