#pragma once
/// \file
/// What was answered at one moment: scores by stream and warning signs. A clinic holds a hundred thousand
/// entries and more, so these take a few dozen bytes and no node for each answer.

#include "core/recovery/sign.h"
#include "core/recovery/symptom.h"

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <iterator>
#include <stdexcept>
#include <utility>
#include <vector>

namespace ebbline::recovery {

/// One symptom on one side.
struct Stream {
    Symptom symptom;
    Side side;
    auto operator<=>(const Stream&) const = default;
};

/// \returns Reason::outOfRange for an unknown symptom, or a side that is neither left nor right.
Done check(const Stream& stream);

/// At most one score for each stream, in the order of the streams; used as std::map<Stream, Score> is.
/// Iterators and references hold until the next change. Promises nothing of the streams: check() does.
class Scores {
public:
    using value_type = std::pair<Stream, Score>;
    using const_iterator = std::vector<value_type>::const_iterator;

    Scores() = default;
    /// Of two scores for one stream the first counts.
    Scores(std::initializer_list<value_type> answers)
    {
        for (const value_type& answer : answers)
            insert(answer);
    }

    const_iterator begin() const { return m_answers.begin(); }
    const_iterator end() const { return m_answers.end(); }
    std::size_t size() const { return m_answers.size(); }
    bool empty() const { return m_answers.empty(); }
    bool contains(const Stream& stream) const { return find(stream) != end(); }
    const_iterator find(const Stream& stream) const
    {
        const auto place = placeOf(stream);
        return place != end() && place->first == stream ? place : end();
    }
    /// \throws std::out_of_range if the stream was not answered.
    const Score& at(const Stream& stream) const
    {
        const auto found = find(stream);
        if (found == end())
            throw std::out_of_range("a stream that was not answered");
        return found->second;
    }

    /// Changes nothing if there is a score for the stream. \returns its place, and whether it is the new one.
    std::pair<const_iterator, bool> emplace(const Stream& stream, Score score)
    {
        const auto place = placeOf(stream);
        if (place != end() && place->first == stream)
            return {place, false};
        return {m_answers.emplace(place, stream, score), true};
    }
    std::pair<const_iterator, bool> insert(const value_type& answer) { return emplace(answer.first, answer.second); }
    void insert_or_assign(const Stream& stream, Score score)
    {
        if (const auto [place, isNew] = emplace(stream, score); !isNew)
            m_answers[static_cast<std::size_t>(place - begin())].second = score;
    }
    /// \returns how many went: 0 or 1.
    std::size_t erase(const Stream& stream)
    {
        const auto found = find(stream);
        if (found == end())
            return 0;
        m_answers.erase(found);
        return 1;
    }
    void clear() { m_answers.clear(); }
    /// Puts `change(stream, score)` in the place of each score.
    template <typename Change>
    void transform(Change change)
    {
        for (value_type& answer : m_answers)
            answer.second = change(std::as_const(answer.first), answer.second);
    }

    bool operator==(const Scores&) const = default;

private:
    const_iterator placeOf(const Stream& stream) const
    {
        return std::lower_bound(begin(), end(), stream,
                                [](const value_type& answer, const Stream& sought) { return answer.first < sought; });
    }
    std::vector<value_type> m_answers;
};

/// A set of signs, in the order of their numbers; used as std::set<Sign> is. It holds numbers up to
/// highestNumber, known or not: check() tells.
class Signs {
public:
    static constexpr unsigned highestNumber = 63;

    class const_iterator {
    public:
        using value_type = Sign;
        using difference_type = std::ptrdiff_t;
        using iterator_category = std::forward_iterator_tag;

        const_iterator() = default;
        Sign operator*() const { return static_cast<Sign>(std::countr_zero(m_rest)); }
        const_iterator& operator++()
        {
            m_rest &= m_rest - 1;
            return *this;
        }
        const_iterator operator++(int)
        {
            const const_iterator before = *this;
            ++*this;
            return before;
        }
        bool operator==(const const_iterator&) const = default;

    private:
        friend class Signs;
        explicit const_iterator(std::uint64_t rest) : m_rest(rest) {}
        std::uint64_t m_rest = 0;
    };

    Signs() = default;
    Signs(std::initializer_list<Sign> signs) : Signs(signs.begin(), signs.end()) {}
    template <std::input_iterator Iterator>
    Signs(Iterator first, Iterator last)
    {
        for (; first != last; ++first)
            insert(*first);
    }

    const_iterator begin() const { return const_iterator(m_bits); }
    const_iterator end() const { return {}; }
    std::size_t size() const { return static_cast<std::size_t>(std::popcount(m_bits)); }
    bool empty() const { return m_bits == 0; }
    bool contains(Sign sign) const { return (m_bits & bitOf(sign)) != 0; }

    /// \returns false, with nothing changed, if the sign is there or its number is above highestNumber.
    bool insert(Sign sign)
    {
        const std::uint64_t before = m_bits;
        m_bits |= bitOf(sign);
        return m_bits != before;
    }
    void erase(Sign sign) { m_bits &= ~bitOf(sign); }
    void clear() { m_bits = 0; }

    bool operator==(const Signs&) const = default;

private:
    static std::uint64_t bitOf(Sign sign)
    {
        const auto number = static_cast<unsigned>(sign);
        return number > highestNumber ? 0 : std::uint64_t{1} << number;
    }
    std::uint64_t m_bits = 0;
};

}  // namespace ebbline::recovery
