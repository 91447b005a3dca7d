#include "app/desk/model/treatment_history.h"

#include <utility>

namespace ebbline::deskapp {

void TreatmentHistory::load(recovery::Treatment treatment)
{
    m_now = std::move(treatment);
    m_before.clear();
    m_after.clear();
    m_typing = TypedField::none;
}

void TreatmentHistory::push(Step step)
{
    m_before.push_back(std::move(step));
    if (m_before.size() > mostSteps) {
        m_before.erase(m_before.begin());
    }
    m_after.clear();
}

void TreatmentHistory::take(recovery::Treatment next, TypedField field)
{
    if (next == m_now) {
        return;
    }
    if (field == TypedField::none || field != m_typing) {
        push({std::exchange(m_now, std::move(next))});
        m_typing = field;
        return;
    }
    m_now = std::move(next);
    m_after.clear();
    // Typed and taken back: no step at all.
    auto former = m_before.back().treatment;
    former.patient = m_now.patient;
    former.at = m_now.at;
    if (former == m_now) {
        m_before.pop_back();
        m_typing = TypedField::none;
    }
}

void TreatmentHistory::takeWhole(recovery::Treatment next, WhenSaid when)
{
    push({std::exchange(m_now, std::move(next)), when, true});
    m_typing = TypedField::none;
}

TreatmentHistory::Step TreatmentHistory::turn(std::vector<Step>& from, std::vector<Step>& to, WhenSaid when)
{
    Step next = std::move(from.back());
    from.pop_back();
    to.push_back({m_now, when, next.whole});
    next.treatment.patient = m_now.patient;
    if (!next.whole) {
        next.treatment.at = m_now.at;
        next.when = when;
    }
    m_now = next.treatment;
    m_typing = TypedField::none;
    return next;
}

}  // namespace ebbline::deskapp
