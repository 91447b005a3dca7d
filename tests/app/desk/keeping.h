#pragma once
/// \file
/// A desk of invented patients, open at the page that keeps its vault.

#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QCoreApplication>
#include <QTemporaryDir>

#include <memory>

namespace ebbline::screens {

struct Keeping {
    DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    QTemporaryDir elsewhere;
    QString words = QString::fromLatin1(DemoClinic::passphrase);

    Keeping()
    {
        program->openKeep();
        REQUIRE(program->page() == app::DeskProgram::Page::keep);
    }
    deskapp::KeepBoard& board() { return *program->keep(); }
    void wait()
    {
        REQUIRE(board().isBusy());
        while (board().isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
        }
    }
    bool opens(const QString& passphrase)
    {
        program->lock();
        const auto raw = passphrase.toStdString();
        return program->workplace().unlock(bytes::viewOf(raw)).has_value();
    }
};

}  // namespace ebbline::screens
