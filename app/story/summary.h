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
    bool isPlain(const std::string& patientName) const;

    /// Searches what was carried and what the hub keeps for names, notes and plain operations; the same
    /// search must find them in a phone's own operations. \returns Reason::refused if it finds any.
    Done judgeSecrecy(Stage& stage);

    Done write(const QString& file, const Done& played) const;

private:
    const Scenario& m_scenario;
    std::map<std::string, int> m_counts;
    std::map<std::string, bool> m_seen;
    QJsonArray m_findings;
    QJsonObject m_hub;
};

}  // namespace ebbline::story
