// Of a bundle: the questionnaire, entries, corrections, and photographs.
#include "core/exchange/fhir_questionnaire.h"
#include "core/exchange/fhir_reader.h"
#include "core/exchange/picture_digest.h"
#include "core/photos/jpeg_scan.h"

namespace ebbline::exchange::fhir {

namespace {

constexpr std::size_t longestFileName = 100;

/// A name in the folder of the bundle, and in no other.
std::string plainFileName(std::string name)
{
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-";
    if (name.empty() || name.size() > longestFileName || name.front() == '.' || name.find_first_not_of(letters) != std::string::npos)
        refuse(Reason::malformed, "a photograph's file is not a plain name beside the bundle");
    return name;
}

/// The entry that a Reference of ours names.
recovery::EntryId entryOf(const Json& resource, const char* list)
{
    const Json& named = arrayOf(resource, list);
    if (named.size() != 1)
        refuse(Reason::malformed, std::string("'") + list + "' does not name one entry");
    return recovery::EntryId{need(idFromUrl(textOf(named[0], "reference")))};
}

void answered(recovery::Entry& entry, const std::string& link, const Json& answer)
{
    if (link.starts_with("score.")) {
        entry.scores.insert_or_assign(streamOf(link), need(recovery::Score::of(wholeOf(member(answer, "valueInteger"), link))));
    } else if (link.starts_with("sign.")) {
        const recovery::Sign sign = need(recovery::signFromWord(std::string_view(link).substr(5)));
        const Json& value = member(answer, "valueBoolean");
        if (!value.is_boolean())
            refuse(Reason::malformed, "'" + link + "' is neither true nor false");
        (value.get<bool>() ? entry.present : entry.absent).insert(sign);
    } else if (link == "temperature") {
        const Json& value = member(answer, "valueDecimal");
        if (!value.is_number())
            refuse(Reason::malformed, "the temperature is no number");
        entry.temperature = need(recovery::Temperature::celsius(value));
    } else if (link == "note") {
        entry.note = textOf(answer, "valueString");
    }
}

}  // namespace

void Reader::questionnaire(const Json& resource)
{
    if (textOrNone(resource, "url") != questionnaireUrl())
        return;
    if (m_links)
        refuse(Reason::malformed, "the questionnaire is there twice");
    if (textOf(resource, "version") != questionnaireVersion)
        refuse(Reason::unsupported, "the questionnaire is of another version");
    m_links.emplace();
    for (const Json& item : arrayOf(resource, "item"))
        if (!m_links->insert(textOf(item, "linkId")).second)
            refuse(Reason::malformed, "the questionnaire asks a question twice");
}

void Reader::diaryEntry(const Json& resource, const bytes::Array<16>& id)
{
    speaksOf(resource, "subject");
    // What was written before questionnaires were names none.
    if (const std::string named = textOrNone(resource, "questionnaire"); !named.empty() && named != questionnaireCanonical())
        refuse(named.starts_with(questionnaireUrl() + "|") ? Reason::unsupported : Reason::malformed, "an entry answers a questionnaire that is not known here");
    else
        m_questionnaireNamed = m_questionnaireNamed || !named.empty();
    recovery::Entry entry;
    entry.id = recovery::EntryId{id};
    entry.course = m_record.course;
    entry.recordedAt = need(takeMoment(resource, "authored"));
    const auto about = momentOf(resource, "about");
    if (!about)
        refuse(Reason::malformed, "an entry does not say which moment it speaks of");
    entry.at = *about;
    std::set<std::string> links;
    for (const Json& item : arrayOf(resource, "item")) {
        const std::string link = textOf(item, "linkId");
        const Json& answers = arrayOf(item, "answer");
        if (answers.size() != 1)
            refuse(Reason::malformed, "'" + link + "' has no answer, or more than one");
        if (!links.insert(link).second)
            refuse(Reason::malformed, "'" + link + "' is answered twice");
        answered(entry, link, answers[0]);
    }
    m_answered.merge(links);
    m_record.entries.push_back(std::move(entry));
}

/// Other resources of this type are for people, or somebody else's.
void Reader::correction(const Json& resource)
{
    if (!resource.contains("activity") || codeOf(resource["activity"], ours("activity")) != "correction")
        return;
    m_record.corrections.push_back({entryOf(resource, "target"), sound(need(takeMoment(resource, "recorded")))});
}

void Reader::picture(const Json& resource, const bytes::Array<16>& id)
{
    speaksOf(resource, "subject");
    CoursePicture picture;
    picture.photo = photos::PhotoId{id};
    if (picture.photo.isNull())
        refuse(Reason::malformed, "a photograph has no name");
    picture.pose = choice<photos::Pose>(resource, "pose", 1, 3);
    picture.at = sound(need(takeMoment(resource, "date")));
    if (resource.contains("context"))
        picture.entry = entryOf(resource["context"], "related");
    const Json& content = arrayOf(resource, "content");
    if (content.size() != 1)
        refuse(Reason::malformed, "a photograph has not one content");
    const Json& attachment = member(content[0], "attachment");
    if (textOf(attachment, "contentType") != "image/jpeg")
        refuse(Reason::malformed, "a photograph is no JPEG");
    if (attachment.contains("size") || attachment.contains("hash") || attachment.contains("url")) {
        PictureFacts facts;
        const int size = wholeOf(member(attachment, "size"), "size");
        if (size < 1 || static_cast<std::size_t>(size) > photos::maximumJpeg)
            refuse(Reason::outOfRange, "a photograph's size is out of its bounds");
        facts.size = static_cast<std::uint32_t>(size);
        const bytes::Bytes hash = need(fromBase64(textOf(attachment, "hash")));
        if (hash.size() != facts.sha1.size())
            refuse(Reason::malformed, "a photograph's hash is not one of SHA-1");
        std::copy(hash.begin(), hash.end(), facts.sha1.begin());
        if (attachment.contains("url"))
            facts.file = plainFileName(textOf(attachment, "url"));
        picture.picture = std::move(facts);
    }
    m_record.pictures.push_back(std::move(picture));
}

}  // namespace ebbline::exchange::fhir
