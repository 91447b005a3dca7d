// A diary whose files were damaged: it is called that and not a wrong passphrase, nothing is deleted, and help stays.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QDir>
#include <QFile>

using namespace ebbline;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);

/// Changes a bit of every 512 bytes, as a worn store does where nobody looks.
void scratch(const DemoPatient& patient, const char* name)
{
    QFile file(QString::fromStdString((patient.folder() / name).string()));
    REQUIRE(file.open(QIODevice::ReadWrite));
    QByteArray all = file.readAll();
    REQUIRE_FALSE(all.isEmpty());
    for (qsizetype at = 40; at < all.size(); at += 512)
        all[at] = static_cast<char>(all[at] ^ 4);
    REQUIRE(file.seek(0));
    REQUIRE(file.write(all) == all.size());
}

/// Names and sizes.
QStringList filesOf(const DemoPatient& patient)
{
    QStringList files;
    for (const QFileInfo& file : QDir(QString::fromStdString(patient.folder().string())).entryInfoList(QDir::Files, QDir::Name))
        if (!file.fileName().endsWith(QLatin1String("-wal")) && !file.fileName().endsWith(QLatin1String("-shm")))
            files << file.fileName() + QLatin1Char(' ') + QString::number(file.size());
    return files;
}

QStringList numbersOf(app::DiaryProgram& program)
{
    QStringList numbers;
    for (const auto& call : program.warning()->calls())
        numbers << call.number;
    return numbers;
}

}  // namespace

TEST_CASE("a damaged diary says on the lock page that it is damaged, deletes nothing, and still says whom to call and when", "[diary][lock][safety]")
{
    DemoPatient patient;
    {
        auto program = patient.joined(QStringLiteral("en"));
        DemoPatient::tell(*program, 3);
    }
    const auto file = GENERATE("vault.db", "vault.keys");
    CAPTURE(file);
    if (file == std::string("vault.keys") && std::filesystem::exists(patient.folder() / "vault.keys.previous"))
        scratch(patient, "vault.keys.previous");
    scratch(patient, file);
    const QStringList before = filesOf(patient);
    auto program = patient.program(QStringLiteral("en"));

    CHECK(program->page() == Page::lock);
    CHECK_FALSE(program->locking()->isFresh());  // no new diary is offered over the one that is there
    program->locking()->unlock(passphrase);
    CHECK(program->page() == Page::lock);
    CHECK_FALSE(program->home().isOpen());
    CHECK(program->locking()->problem() == QLatin1String("The diary's file is damaged. Nothing was deleted. Call your clinic."));
    const QStringList after = filesOf(patient);
    for (const QString& kept : before)
        CHECK(after.contains(kept));

    program->openCall();
    CHECK(program->page() == Page::call);
    CHECK(program->warning()->clinicName() == QLatin1String("Practice at the Quay"));
    program->warning()->setRegion(QLocale::Germany);
    CHECK(numbersOf(*program) == QStringList{"+00 555 0100", "+00 555 0199", "112"});
    CHECK(program->warning()->doNow() == QLatin1String("If you are worried, call. You do not need a reason."));
    CHECK(program->warning()->emergencySigns().size() == 7);
    CHECK(program->warning()->callSigns().contains(QStringLiteral("You have a fever of 38 °C or more.")));
    program->back();
    CHECK(program->page() == Page::lock);
}

TEST_CASE("a warning that stood when the diary locked keeps its advice and its first number although the diary is damaged since", "[diary][lock][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tellSign(*program, recovery::Sign::breathing);
    REQUIRE(program->page() == Page::warning);
    const QString advice = program->warning()->doNow();
    program->lockIdle();
    scratch(patient, "vault.db");

    CHECK(program->page() == Page::call);
    program->back();
    program->locking()->unlock(passphrase);

    CHECK(program->locking()->problem() == QLatin1String("The diary's file is damaged. Nothing was deleted. Call your clinic."));
    program->openCall();
    CHECK(program->warning()->title() == QLatin1String("Call the emergency number now"));
    CHECK(program->warning()->doNow() == advice);
    CHECK(program->warning()->isLoud());
    CHECK(numbersOf(*program) == QStringList{"112", "+00 555 0100", "+00 555 0199"});
}

TEST_CASE("where whom to call is damaged as well, the emergency number of the place stands there", "[diary][lock][call][safety]")
{
    DemoPatient patient;
    patient.joined(QStringLiteral("en")).reset();
    scratch(patient, "vault.db");
    scratch(patient, "open.info");
    auto program = patient.program(QStringLiteral("en"));
    program->warning()->setRegion(QLocale::Germany);
    program->openCall();

    CHECK(program->warning()->clinicName().isEmpty());
    CHECK(numbersOf(*program) == QStringList{"112"});
    CHECK(program->warning()->callHint() == QLatin1String("You are in another place? Call the emergency number of that place."));
}
