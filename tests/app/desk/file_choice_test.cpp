// A file is asked for without holding anybody up, and the answer goes to who asked, if that still is there.
#include "app/desk/model/file_choice.h"

#include <catch2/catch_test_macros.hpp>

#include <QApplication>
#include <QFileDialog>
#include <QPointer>
#include <QTemporaryDir>

#include <memory>

using namespace ebbline;

namespace {

/// The dialog that stands open.
QFileDialog* openDialog()
{
    for (auto* widget : QApplication::topLevelWidgets()) {
        if (auto* dialog = qobject_cast<QFileDialog*>(widget); dialog != nullptr && dialog->isVisible()) {
            return dialog;
        }
    }
    return nullptr;
}

}  // namespace

TEST_CASE("where to save is asked with a name, whose ending a bare name gets", "[desk][file]")
{
    QTemporaryDir folder;
    QObject asker;
    QString chosen;
    deskapp::askWhereToSave(asker, QStringLiteral("Save the list"), folder.filePath(QStringLiteral("list-2027-03-01.csv")),
        {QStringLiteral("CSV (*.csv)")}, [&](const QString& path) { chosen = path; });
    CHECK(chosen.isEmpty());  // nobody was held up
    const QPointer<QFileDialog> dialog = openDialog();
    REQUIRE(dialog != nullptr);
    CHECK(dialog->windowTitle() == QStringLiteral("Save the list"));
    CHECK(dialog->acceptMode() == QFileDialog::AcceptSave);
    CHECK(dialog->nameFilters() == QStringList{QStringLiteral("CSV (*.csv)")});
    CHECK(dialog->selectedFiles() == QStringList{folder.filePath(QStringLiteral("list-2027-03-01.csv"))});

    dialog->selectFile(folder.filePath(QStringLiteral("mine")));
    REQUIRE(QMetaObject::invokeMethod(dialog.data(), "accept"));
    CHECK(chosen == folder.filePath(QStringLiteral("mine.csv")));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    CHECK(dialog.isNull());  // nothing of it stays
}

TEST_CASE("a file to read has to exist, and an answer to nobody goes nowhere", "[desk][file]")
{
    QTemporaryDir folder;
    auto asker = std::make_unique<QObject>();
    bool answered = false;
    deskapp::askForFile(*asker, QStringLiteral("Take a protocol"), {}, [&](const QString&) { answered = true; });
    const QPointer<QFileDialog> dialog = openDialog();
    REQUIRE(dialog != nullptr);
    CHECK(dialog->acceptMode() == QFileDialog::AcceptOpen);
    CHECK(dialog->fileMode() == QFileDialog::ExistingFile);
    SECTION("who asked has gone")
    {
        asker.reset();
        Q_EMIT dialog->fileSelected(folder.filePath(QStringLiteral("protocol.json")));
        CHECK_FALSE(answered);
    }
    SECTION("the person turns away")
    {
        dialog->reject();
        CHECK_FALSE(answered);
    }
    SECTION("a file is chosen")
    {
        Q_EMIT dialog->fileSelected(folder.filePath(QStringLiteral("protocol.json")));
        CHECK(answered);
    }
    delete dialog;
}
