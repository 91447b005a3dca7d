#pragma once
/// \file
/// What can be undone of a treatment being written, and done again. Plain values, no words.

#include "core/recovery/treatment.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace ebbline::deskapp {

/// Fields that are typed letter by letter.
enum class TypedField : std::uint8_t { none, lot, expiry, redoneReason, weight, otherwise, note, reason };

/// How it is known when the treatment was.
enum class WhenSaid : std::uint8_t { no, said, confirmed };

class TreatmentHistory {
public:
    static constexpr std::size_t mostSteps = 200;  ///< remembered; the oldest go first

    struct Step {
        recovery::Treatment treatment;
        WhenSaid when = WhenSaid::no;
        bool whole = false;  ///< the time goes with it. Whose it is never does
    };

    /// Begins with this one; nothing to undo.
    void load(recovery::Treatment treatment);
    /// What stands there now.
    const recovery::Treatment& now() const { return m_now; }
    /// One step, if anything has changed. While one field is typed in, all its letters are one.
    void take(recovery::Treatment next, TypedField field = TypedField::none);
    /// One step that the time goes with. `when`: of what stood there.
    void takeWhole(recovery::Treatment next, WhenSaid when);
    void endTyping() { m_typing = TypedField::none; }
    /// Chosen apart from what can be undone.
    void setPatient(const recovery::PatientId& patient) { m_now.patient = patient; }
    void setAt(const clock::Moment& at) { m_now.at = at; }

    bool canUndo() const { return !m_before.empty(); }
    bool canRedo() const { return !m_after.empty(); }
    /// `when`: of what stands there now. \returns what stands there then. \pre canUndo()
    Step undo(WhenSaid when) { return turn(m_before, m_after, when); }
    Step redo(WhenSaid when) { return turn(m_after, m_before, when); }  ///< \pre canRedo()

private:
    void push(Step step);
    Step turn(std::vector<Step>& from, std::vector<Step>& to, WhenSaid when);

    recovery::Treatment m_now;
    std::vector<Step> m_before;  ///< oldest first
    std::vector<Step> m_after;
    TypedField m_typing = TypedField::none;
};

}  // namespace ebbline::deskapp
