#pragma once
/// \file
/// What a person of the clinic may do at its desks. People are names behind one passphrase of a desk: a role is a rule of
/// the house and no lock. Which role may do what, and why: docs/decisions/0040-roles-are-a-rule-of-the-house.md.

#include "core/clock/instant.h"
#include "core/recovery/treatment.h"

#include <cstdint>
#include <string>

namespace ebbline::records {

/// Stored: never renumber. Whoever has none may do everything.
enum class Role : std::uint8_t {
    inCharge = 1,      ///< answers for the clinic: everything
    practitioner = 2,  ///< treats, and follows her patients
    onCall = 3,        ///< takes over the queue
    assistant = 4,     ///< receives patients, links their phones, rings them
    machines = 5,      ///< runs the computers: desks, backups, keys
};
inline constexpr Role newestRole = Role::machines;

/// What a role may allow. Whatever is none of these is open to everyone: taking and calling a patient, noting a call,
/// moving a visit, reopening a finding, writing to her, and handing over. Stored: never renumber.
enum class Task : std::uint8_t {
    treat = 1,     ///< record and correct treatments and follow-ups
    close = 2,     ///< close a finding with an outcome
    protocol = 3,  ///< sign a protocol, put a usual range into use, limit the anaesthetic
    phones = 4,    ///< link, replace and end patients' phones
    desks = 5,     ///< add and shut out desks, begin a fresh key, name the hub
    numbers = 6,   ///< change whom patients call
    people = 7,    ///< name people, give roles, rename the clinic
    keep = 8,      ///< back up, change the ways into the vault, save the list of who did what
    figures = 9,   ///< see and save the practice's figures
};
inline constexpr Task newestTask = Task::figures;

/// \pre both are known.
bool allows(Role role, Task task);

/// Clinic only: a person has this role from now on, in place of the one before.
struct RoleGiven {
    std::string person;  ///< as the clinic names her; not empty
    Role role = Role::inCharge;
    std::string by;
    clock::Moment at;
    bool operator==(const RoleGiven&) const = default;
};

/// Clinic only: who did what the next operation of the same device says, where that one carries no name. Written in one
/// transaction with it, once the clinic has given a role, and before every correction of a patient.
struct WorkDone {
    Task task = Task::treat;
    recovery::CourseId course;  ///< null: about none
    std::string by;
    clock::Moment at;
    bool operator==(const WorkDone&) const = default;
};

}  // namespace ebbline::records
