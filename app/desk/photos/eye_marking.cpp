#include "app/desk/photos/eye_marking.h"

namespace ebbline::deskapp {

namespace {

long long squareBetween(const photos::Spot& a, const photos::Spot& b)
{
    const long long across = a.across - b.across;
    const long long down = a.down - b.down;
    return across * across + down * down;
}

}  // namespace

EyeMarking::EyeMarking(const std::optional<photos::Eyes>& known)
{
    m_steps.push_back(known ? Step{known->right, known->left} : Step{});
}

void EyeMarking::put(const photos::Spot& spot)
{
    auto step = m_steps.back();
    const bool right = !step.right || (step.left && squareBetween(spot, *step.right) <= squareBetween(spot, *step.left));
    (right ? step.right : step.left) = spot;
    m_steps.push_back(step);
}

void EyeMarking::undo()
{
    if (canUndo()) {
        m_steps.pop_back();
    }
}

std::optional<EyeMarking::Eye> EyeMarking::next() const
{
    if (!right()) {
        return Eye::right;
    }
    return left() ? std::nullopt : std::optional(Eye::left);
}

std::optional<photos::Eyes> EyeMarking::eyes() const
{
    return right() && left() ? std::optional(photos::Eyes{*left(), *right()}) : std::nullopt;
}

bool EyeMarking::looksSwapped() const
{
    const auto both = eyes();
    return both && both->left.across < both->right.across;
}

}  // namespace ebbline::deskapp
