#include "app/desk/model/file_choice.h"

#include <QFileDialog>
#include <QFileInfo>

#include <utility>

namespace ebbline::deskapp {

namespace {

void ask(QFileDialog& dialog, QObject& asker, const QString& title, const QStringList& kinds, WithFile chosen)
{
    dialog.setAttribute(Qt::WA_DeleteOnClose);
    dialog.setWindowTitle(title);
    if (!kinds.isEmpty()) {
        dialog.setNameFilters(kinds);
    }
    QObject::connect(&dialog, &QFileDialog::fileSelected, &asker, std::move(chosen));
    dialog.open();
}

}  // namespace

void askForFile(QObject& asker, const QString& title, const QStringList& kinds, WithFile chosen)
{
    auto* dialog = new QFileDialog();
    dialog->setAcceptMode(QFileDialog::AcceptOpen);
    dialog->setFileMode(QFileDialog::ExistingFile);
    ask(*dialog, asker, title, kinds, std::move(chosen));
}

void askWhereToSave(QObject& asker, const QString& title, const QString& name, const QStringList& kinds, WithFile chosen)
{
    auto* dialog = new QFileDialog();
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QFileInfo(name).suffix());
    dialog->selectFile(name);
    ask(*dialog, asker, title, kinds, std::move(chosen));
}

}  // namespace ebbline::deskapp
