#pragma once
/// \file
/// What happened in the story: counts, findings with their delay after what was really going on,
/// and whether the hub could read anything.

#include "app/story/stage.h"

#include <QJsonArray>
#include <QJsonObject>

namespace ebbline::story {

class Summary {
public:
    explicit Summary(const Scenario& scenario) : m_scenario(scenario) {}

    void count(const char* what, int by = 1) { m_counts[what] += by; }
    int counted(const char* what) const;
    /// A finding as it stood in the queue; each is taken once.
    void found(Stage& stage, const recovery::CourseId& course, const triage::Finding& finding);

    /// What the phone's own page said of one entry, in the order in which it said it.
    void followed(const std::string& kind, const QStringList& states);

    /// Ends the hub, and searches what was carried and the hub's database, decrypted with its own key, for names, notes and
    /// whole entries, and its log for names and notes; the same searches must find them in a phone's own operations, and in
    /// the database once such an operation, with a note or without, is put into it unsealed. \returns Reason::refused if they find any, Reason::notEnough if a
    /// search finds nothing where it must.
    Done judgeSecrecy(Stage& stage);

    /// The file is whole, or as it was before. \returns Reason::storageFailed.
    Done write(const QString& file, const Done& played) const;

private:
    QStringList wordsOfPatients() const;

    const Scenario& m_scenario;
    std::map<std::string, int> m_counts;
    std::map<std::string, bool> m_seen;
    QJsonArray m_findings;
    QJsonObject m_followed;
    QJsonObject m_hub;
};

}  // namespace ebbline::story
