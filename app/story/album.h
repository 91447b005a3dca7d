#pragma once
/// \file
/// Pictures of the real screens at the moments that matter, and of every page in three languages.

#include "app/story/stage.h"

#include <QSet>
#include <QStringList>

namespace ebbline::story {

class Album {
public:
    Album(QString folder, bool on);

    void afterPairing(Stage& stage);
    void afterEntry(Stage& stage, Phone& phone, const Telling& telling, const std::vector<triage::Finding>& findings);
    void atTheQueue(Stage& stage);
    void atTheEnd(Stage& stage);

    std::size_t pictures() const { return static_cast<std::size_t>(m_pictures.size()); }
    /// Pages of either program that no picture shows, and files that could not be made, with the reason; empty if there
    /// are to be no pictures.
    QStringList missing() const;

    /// A picture of the window as it stands, under this name. One of a window whose page is not there counts for none.
    void phone(app::DiaryProgram& program, const QString& name);
    void desk(app::DeskProgram& program, const QString& name);

private:
    template <typename Program>
    void take(Program& program, const QString& name, QSet<QString>& pages);
    void unwritten(const QString& file);
    void theirPhotographs(app::DiaryProgram& program, const QString& suffix);
    void everyPhonePage(Phone& phone, const QString& suffix);
    void everyDeskPage(Stage& stage, const QString& suffix);
    void theDoors(Stage& stage, const QString& language);

    QString m_folder;
    QSet<QString> m_phonePages;
    QSet<QString> m_deskPages;
    QSet<QString> m_pictures;  ///< by name: one that is taken again replaces the old one
    QStringList m_failed;      ///< what was to be made and is not, with the reason
    bool m_on;
    bool m_firstEvening = false;
    bool m_warning = false;
    std::size_t m_longestQueue = 0;
};

}  // namespace ebbline::story
