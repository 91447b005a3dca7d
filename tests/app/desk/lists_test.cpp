// The list behind every list view, and the number field.
#include "app/desk/model/clinic_editor.h"
#include "app/desk/model/qr_encode.h"
#include "app/desk/model/row_list.h"
#include "app/desk/model/step_value.h"

#include <catch2/catch_test_macros.hpp>

#include <QAbstractItemModelTester>
#include <QLocale>
#include <QSignalSpy>

#include <rapidcheck.h>

using namespace ebbline::deskapp;

namespace {

QList<RowList::Row> rowsOf(const std::vector<int>& keys)
{
    QList<RowList::Row> rows;
    std::set<int> seen;
    for (const int key : keys) {
        if (seen.insert(key).second) {
            rows.append({QString::number(key), {}, key});
        }
    }
    return rows;
}

QStringList keysOf(const RowList& list)
{
    QStringList keys;
    for (int i = 0; i < list.rowCount(); ++i) {
        keys << list.keyAt(i);
    }
    return keys;
}

}  // namespace

TEST_CASE("a list becomes the new rows, and says every step to its view", "[desk][list][property]")
{
    CHECK(rc::check("setRows", [] {
        RowList list;
        QAbstractItemModelTester tester(&list, QAbstractItemModelTester::FailureReportingMode::Fatal);
        for (int round = 0; round < 3; ++round) {
            const auto rows = rowsOf(*rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 12)));
            list.setRows(rows);
            RC_ASSERT(keysOf(list).size() == rows.size());
            for (int i = 0; i < rows.size(); ++i) {
                RC_ASSERT(list.keyAt(i) == rows[i].key);
                RC_ASSERT(list.rowOf(rows[i].key) == i);
                RC_ASSERT(list.data(list.index(i), RowList::rowRole) == rows[i].value);
            }
        }
    }));
}

TEST_CASE("rows that stayed are not reset, so that a view keeps its place", "[desk][list]")
{
    RowList list;
    list.setRows(rowsOf({1, 2, 3}));
    QSignalSpy resets(&list, &QAbstractItemModel::modelReset);
    QSignalSpy inserted(&list, &QAbstractItemModel::rowsInserted);

    list.setRows(rowsOf({4, 1, 2, 3}));

    CHECK(resets.isEmpty());
    CHECK(inserted.count() == 1);
}

TEST_CASE("a number field understands the language's decimal sign and a point", "[desk][step]")
{
    StepValue number;
    number.setProperty("to", 20.0);
    number.setProperty("decimals", 1);
    QSignalSpy moved(&number, &StepValue::moved);

    QLocale::setDefault(QLocale(QLocale::German));
    number.take(QStringLiteral("0,6"));
    number.take(QStringLiteral("1.5"));
    QLocale::setDefault(QLocale(QLocale::English));

    REQUIRE(moved.count() >= 1);
    CHECK(moved[0][0].toDouble() == 0.6);
}

TEST_CASE("a number field never offers a value outside its range, nor one that is no number", "[desk][step]")
{
    StepValue number;
    number.setProperty("from", 14.0);
    number.setProperty("to", 32.0);
    number.setProperty("value", 19.0);
    QSignalSpy moved(&number, &StepValue::moved);

    number.take(QStringLiteral("99"));
    number.take(QStringLiteral("thick"));
    number.take(QStringLiteral("nan"));

    REQUIRE(moved.count() == 1);
    CHECK(moved[0][0].toDouble() == 32);
}

TEST_CASE("a number that nobody said has a mark in its field, and an empty field says nothing", "[desk][step]")
{
    StepValue number;
    number.setProperty("to", 500.0);
    number.setProperty("step", 10.0);
    number.setProperty("lowest", QStringLiteral("–"));
    CHECK(number.text() == QStringLiteral("–"));
    number.setProperty("value", 90.0);
    CHECK(number.text() == QLatin1String("90"));
    QSignalSpy moved(&number, &StepValue::moved);

    number.take(QString());
    number.take(QStringLiteral(" – "));
    number.take(QStringLiteral("60"));
    number.take(QStringLiteral("long"));

    REQUIRE(moved.count() == 3);
    CHECK(moved[0][0].toDouble() == 0);
    CHECK(moved[1][0].toDouble() == 0);
    CHECK(moved[2][0].toDouble() == 60);

    // A number without such a mark keeps what it had.
    StepValue plain;
    QSignalSpy unmoved(&plain, &StepValue::moved);
    plain.setProperty("value", 19.0);
    plain.take(QString());
    CHECK(unmoved.isEmpty());
}

TEST_CASE("a QR code is square and holds nothing for an empty text", "[desk][qr]")
{
    const auto code = encodeQr("EBP1:ABCDEF");

    REQUIRE(code.size >= 21);
    CHECK(code.dark.size() == code.size * code.size);
    CHECK(encodeQr("").size == 0);
}

TEST_CASE("only this very machine may be reached without TLS", "[desk][hub]")
{
    CHECK(isThisMachine(QStringLiteral("127.0.0.1:8443")));
    CHECK(isThisMachine(QStringLiteral("localhost:8443")));
    CHECK(isThisMachine(QStringLiteral("[::1]:8443")));
    CHECK_FALSE(isThisMachine(QStringLiteral("hub.example:8443")));
    CHECK_FALSE(isThisMachine(QStringLiteral("localhost.example:8443")));
    CHECK_FALSE(isThisMachine(QStringLiteral("192.168.0.9:8443")));
}
