#pragma once
/// \file
/// Pictures of the real screens at the moments that matter, and of every page in three languages.

#include "app/story/stage.h"

namespace ebbline::story {

class Album {
public:
    Album(QString folder, bool on);

    void afterPairing(Stage& stage);
    void afterEntry(Stage& stage, Phone& phone, const Telling& telling, const std::vector<triage::Finding>& findings);
    void atTheQueue(Stage& stage);
    void atTheEnd(Stage& stage);

private:
    void phone(app::DiaryProgram& program, const QString& name);
    void desk(app::DeskProgram& program, const QString& name);
    void everyPhonePage(Phone& phone, const QString& suffix);
    void everyDeskPage(Stage& stage, const QString& suffix);

    QString m_folder;
    bool m_on;
    bool m_firstEvening = false;
    bool m_warning = false;
    std::size_t m_longestQueue = 0;
};

}  // namespace ebbline::story
