// What a journal keeps of its operations, course by course.

#include "core/journal/state.h"

#include <algorithm>
#include <iterator>

namespace ebbline::journal {

Journal::Kept Journal::cut(Operation operation)
{
    auto tail = m_tails.tailOf(operation.body);
    if (tail) {
        operation.body.resize(operation.body.size() - tail->size());
        operation.body.shrink_to_fit();
    }
    return {std::move(operation), std::move(tail)};
}

Operation Journal::whole(const Kept& kept)
{
    Operation operation = kept.operation;
    if (kept.tail)
        operation.body = bytes::joined(operation.body, kept.tail);
    return operation;
}

Operation Journal::find(const OperationId& id, const recovery::CourseId& course) const
{
    const auto& operations = m_shelves.at(course).operations;
    return whole(*std::ranges::find(operations, id, [](const Kept& kept) { return kept.operation.id; }));
}

void Journal::remove(const OperationId& id)
{
    const recovery::CourseId course = m_known.at(id);
    Shelf& shelf = m_shelves.at(course);
    std::erase_if(shelf.operations, [&](const Kept& kept) { return kept.operation.id == id; });
    m_known.erase(id);
    --m_state.operations;
    refold(course, shelf);
}

std::vector<Operation> Journal::operations() const
{
    std::vector<Operation> all;
    for (const auto& [course, shelf] : m_shelves)
        std::ranges::transform(shelf.operations, std::back_inserter(all), whole);
    std::sort(all.begin(), all.end(), before);
    return all;
}

}  // namespace ebbline::journal
