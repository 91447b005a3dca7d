#include "core/journal/state.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"

namespace ebbline::journal {

namespace {

/// A canonical line of text for each fact, in the order of the maps: bodies are written as the
/// hexadecimal form of their own canonical bytes.
class Dump {
public:
    void line(std::string_view name, const auto& id, const records::Body& body)
    {
        m_text += name;
        m_text += ' ';
        m_text += text(id);
        m_text += ' ';
        m_text += bytes::toHex(records::encode(body));
        m_text += '\n';
    }
    void line(std::string_view text)
    {
        m_text += text;
        m_text += '\n';
    }
    std::string take() { return std::move(m_text); }

private:
    template <typename Tag>
    static std::string text(const bytes::Id<Tag>& id)
    {
        return bytes::toHex(id.view());
    }
    static std::string text(const std::string& id) { return bytes::toHex(bytes::viewOf(id)); }

    std::string m_text;
};

std::string place(const OperationId& id)
{
    return bytes::toHex(id.device.view()) + "/" + std::to_string(id.number);
}

void dumpCorrection(Dump& out, const PatientCorrection& correction)
{
    const std::string where = place(correction.operation);
    out.line("patient-correction", where, correction.written);
    out.line("patient-correction-before", where, correction.before);
    out.line("patient-correction-after", where, correction.after);
    out.line("patient-correction-by " + where + " " + bytes::toHex(bytes::viewOf(correction.by)) + (correction.crossed ? " crossed" : ""));
}

void dumpCourse(Dump& out, const recovery::CourseId& id, const CourseState& course)
{
    out.line("course " + bytes::toHex(id.view()));
    for (const auto& version : course.treatmentVersions) {
        out.line("treatment", place(version.operation), version.value);
        if (version.supersedes)
            out.line("treatment-supersedes " + place(version.operation) + " " + place(*version.supersedes));
    }
    if (course.opened)
        out.line("opened", id, *course.opened);
    for (const FormerCount& count : course.formerCounts) {
        std::string line = "former-count " + clock::toIso8601(count.treated) + " " + std::to_string(count.until.bits);
        for (const auto& [stream, score] : count.baseline)
            line += " " + std::string(recovery::word(stream.symptom)) + "/" + std::string(recovery::word(stream.side)) + "="
                    + std::to_string(score.points());
        out.line(line);
    }
    if (course.planChanges > 0)
        out.line("plan-changes " + std::to_string(course.planChanges));
    if (course.link)
        out.line("link", id, *course.link);
    for (const auto& [entry, history] : course.entries)
        for (const auto& version : history.versions)
            out.line("entry", place(version.operation), records::EntryRecorded{version.value});
    for (const auto& [entry, opening] : course.openings)
        out.line("opening " + bytes::toHex(entry.view()) + " " + bytes::toHex(bytes::viewOf(opening.by)) + " "
                 + clock::toIso8601(opening.at));
    for (const auto& [version, opening] : course.versionOpenings)
        out.line("version-opening " + place(version) + " " + bytes::toHex(bytes::viewOf(opening.by)) + " "
                 + clock::toIso8601(opening.at));
    for (const auto& [key, answer] : course.reminders)
        out.line("reminder", key, answer);
    for (const auto& warning : course.warnings)
        out.line("warning", warning.entry, warning);
    for (const auto& act : course.acts)
        out.line("act", act.finding, act);
    for (const auto& call : course.calls)
        out.line("call", place(call.operation), call.value);
    for (const auto& [act, back] : course.actsTakenBack)
        out.line("act-taken-back " + place(act), id, back);
    for (const auto& message : course.messages)
        out.line("message", message.message, message);
    for (const auto& [message, read] : course.reads)
        out.line("read", message, read);
    for (const auto& [photo, version] : course.photos)
        out.line("photo", place(version.operation), version.value);
    for (const auto& [photo, removed] : course.photosRemoved)
        out.line("photo-removed", photo, removed);
    for (const auto& [photo, at] : course.photosReceived)
        out.line("photo-received " + bytes::toHex(photo.view()) + " " + clock::toIso8601(at));
    for (const auto& [photo, by] : course.clinicPhotos)
        out.line("clinic-photo " + bytes::toHex(photo.view()) + " " + bytes::toHex(bytes::viewOf(by)));
    for (const auto& [photo, by] : course.clinicPhotosRemoved)
        out.line("clinic-photo-removed " + bytes::toHex(photo.view()) + " " + bytes::toHex(bytes::viewOf(by)));
    for (const auto& [photo, holders] : course.photoHolders)
        if (course.clinicPhotos.contains(photo))
            for (const envelope::DeviceId& holder : holders)
                out.line("clinic-photo-held " + bytes::toHex(photo.view()) + " " + bytes::toHex(holder.view()));
    for (const auto& [photo, marked] : course.eyes)
        out.line("eyes", photo, marked);
    for (const auto& [device, key] : course.phoneKeys)
        out.line("phone-key", device, key);
    if (course.followUp)
        out.line("follow-up", id, *course.followUp);
}

}  // namespace

std::string dump(const State& state)
{
    Dump out;
    out.line("operations " + std::to_string(state.operations) + " unknown " + std::to_string(state.unknown)
             + " unreadable " + std::to_string(state.unreadable));
    if (state.clinic)
        out.line("clinic", std::string("-"), *state.clinic);
    if (state.doseLimited)
        out.line("dose-limited", std::string("-"), *state.doseLimited);
    for (const auto& [id, patient] : state.patients)
        out.line("patient", id, patient);
    for (const auto& [id, corrections] : state.patientCorrections)
        for (const auto& correction : corrections)
            dumpCorrection(out, correction);
    for (const auto& [device, made] : state.backups)
        for (const clock::Moment& at : made)
            out.line("backup " + bytes::toHex(device.view()) + " " + clock::toIso8601(at));
    for (const auto& [course, count] : state.notUnderstood)
        out.line("not-understood " + bytes::toHex(course.view()) + " " + std::to_string(count));
    for (const auto& [name, protocol] : state.protocols)
        out.line("protocol", name, protocol);
    for (const bands::Learned& learned : state.bands.versions())
        out.line("band", learned.version(), records::BandLearned{learned, state.bandThresholds.at(learned.version())});
    for (const bands::Choice& choice : state.bands.choices())
        out.line("band-choice", choice.version, records::BandChosen{choice});
    for (const auto& [id, word] : state.words)
        out.line("word", place(id), word);
    for (const auto& given : state.roles)
        out.line("role", place(given.operation), given.value);
    // Without roles nothing follows from whom the clinic named before.
    if (!state.roles.empty())
        for (const auto& named : state.people)
            out.line("people", place(named.operation), records::ClinicDescribed{{}, {}, named.value});
    for (const auto& [id, course] : state.courses)
        dumpCourse(out, id, course);
    return out.take();
}

bytes::Array<32> digest(const State& state)
{
    return crypto::hash256(bytes::viewOf(dump(state)));
}

}  // namespace ebbline::journal
