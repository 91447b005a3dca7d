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

    /// Somebody is treated and her phone linked; of one of the phones it is worth a picture.
    void atTheTreatment(Stage& stage, Scene scene);
    /// Before an entry: what is due.
    void beforeEntry(Phone& phone);
    void afterEntry(Stage& stage, Phone& phone, const Telling& telling, const std::vector<triage::Finding>& findings);
    void atTheQueue(Stage& stage);
    /// `drawing` is told the number of each picture, counted from 1, and of how many.
    void atTheEnd(Stage& stage, const std::function<void(std::size_t at, std::size_t of)>& drawing);
    /// The form of a follow-up as it stands.
    void atTheFollowUp(Stage& stage, const QString& state);

    std::size_t pictures() const { return static_cast<std::size_t>(m_pictures.size()); }
    /// Pages of either program, and states of them (page_states.h), that no picture shows, and files that could not be made, with the reason; empty if there
    /// are to be no pictures.
    QStringList missing() const;

    /// A picture of the window as it stands, under this name. One of a window whose page is not there counts for none. With
    /// words of the page: further down, where they begin.
    void phone(app::DiaryProgram& program, const QString& name, const QString& from = {});
    void desk(app::DeskProgram& program, const QString& name);

private:
    /// Each brings a page up and takes its picture; in this order.
    using Drawings = std::vector<std::function<void()>>;

    template <typename Program>
    void take(Program& program, const QString& name, QSet<QString>& states);
    void unwritten(const QString& file);
    void addPhonePages(Drawings& drawings, Phone& phone, const QString& suffix);
    void addPhotographs(Drawings& drawings, Phone& phone, const QString& suffix);
    void addDeskPages(Drawings& drawings, Stage& stage, const QString& suffix);
    void addDeskLists(Drawings& drawings, Stage& stage, const QString& suffix);
    void addDoors(Drawings& drawings, Stage& stage, const QString& language);
    void writeSheet(app::DeskProgram& program, const QString& suffix);
    void beginTreatment(Stage& stage);

    QString m_folder;
    QSet<QString> m_phoneStates;
    QSet<QString> m_deskStates;
    QSet<QString> m_pictures;  ///< by name: one that is taken again replaces the old one
    QStringList m_failed;      ///< what was to be made and is not, with the reason
    bool m_on;
    bool m_due = false;
    bool m_firstEvening = false;
    bool m_warning = false;
    std::size_t m_longestQueue = 0;
};

}  // namespace ebbline::story
