#include "core/bytes/shared_tails.h"

#include <utility>

namespace ebbline::bytes {

namespace {

bool endsWith(View whole, View tail)
{
    return whole.size() >= tail.size() && std::ranges::equal(whole.last(tail.size()), tail);
}

std::size_t inCommon(View a, View b)
{
    const auto apart = std::mismatch(a.rbegin(), a.rend(), b.rbegin(), b.rend());
    return static_cast<std::size_t>(apart.first - a.rbegin());
}

}  // namespace

void SharedTails::add(Tail tail)
{
    m_tails.insert(m_tails.begin(), std::move(tail));
    if (m_tails.size() > most)
        m_tails.pop_back();
}

SharedTails::Tail SharedTails::tailOf(View whole)
{
    if (whole.size() < shortest)
        return nullptr;
    const auto known = std::ranges::find_if(m_tails, [&](const Tail& tail) { return endsWith(whole, *tail); });
    if (known != m_tails.end()) {
        std::rotate(m_tails.begin(), known, known + 1);
        return m_tails.front();
    }
    const std::size_t common = inCommon(whole, m_last);
    if (common < shortest) {
        m_last.assign(whole.begin(), whole.end());
        return nullptr;
    }
    const View end = whole.last(common);
    add(std::make_shared<const Bytes>(end.begin(), end.end()));
    return m_tails.front();
}

Bytes joined(View own, const SharedTails::Tail& tail)
{
    Bytes whole;
    whole.reserve(own.size() + (tail ? tail->size() : 0));
    whole.assign(own.begin(), own.end());
    if (tail)
        whole.insert(whole.end(), tail->begin(), tail->end());
    return whole;
}

}  // namespace ebbline::bytes
