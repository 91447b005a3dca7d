#pragma once
/// \file
/// A file on this computer, asked of the person. The dialogs hold nobody up: the page behind stays alive, and locking the
/// desk still works; whoever gets the answer looks at whether it still may use it.

#include <QString>
#include <QStringList>

#include <functional>

class QObject;

namespace ebbline::deskapp {

/// What is done with the path; not called when the person turns away, or once `asker` is gone.
using WithFile = std::function<void(const QString& path)>;

/// An existing file, of one of the kinds: "JSON (*.json)".
void askForFile(QObject& asker, const QString& title, const QStringList& kinds, WithFile chosen);

/// Where to save. `name` is offered; its ending is given to a name typed without one. No patient's name belongs in it: such
/// names show up in lists of recent files. Without kinds every file is shown.
void askWhereToSave(QObject& asker, const QString& title, const QString& name, const QStringList& kinds, WithFile chosen);

}  // namespace ebbline::deskapp
