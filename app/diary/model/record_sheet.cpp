// The patient's own record as a page to print.

#include "app/diary/model/entry_words.h"
#include "app/diary/model/mine_board.h"
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QFile>
#include <QGuiApplication>
#include <QPageSize>
#include <QPdfWriter>
#include <QTextDocument>
#include <QTextOption>

#include <algorithm>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryRecord", text);
}

QString paragraph(const QString& text)
{
    return text.isEmpty() ? QString() : QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped().replace(QLatin1Char('\n'), QLatin1String("<br/>")));
}

QString heading(const QString& text)
{
    return QStringLiteral("<h2>%1</h2>").arg(text.toHtmlEscaped());
}

}  // namespace

QString recordHtml(const patient::Diary& diary, bool fahrenheit)
{
    const clock::Moment now = diary.today().now;
    QString html = QStringLiteral("<h1>%1</h1>").arg(said(QT_TRANSLATE_NOOP("DiaryRecord", "My diary")).toHtmlEscaped());
    html += paragraph(said(QT_TRANSLATE_NOOP("DiaryRecord", "Treatment: %1. Clinic: %2. Made on %3."))
                          .arg(stampText(diary.course().treated), QString::fromStdString(diary.course().contacts.clinicName), stampText(now)));
    html += paragraph(said(QT_TRANSLATE_NOOP("DiaryRecord", "Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.")));
    auto views = diary.history();
    std::reverse(views.begin(), views.end());
    for (const patient::EntryView& view : views) {
        html += heading(QStringLiteral("%1 · %2").arg(dayText(view.day), stampText(view.history.current().at)));
        for (std::size_t i = view.history.versions.size(); i-- > 0;) {
            const recovery::Entry& entry = view.history.versions[i].value;
            if (i + 1 != view.history.versions.size())
                html += paragraph(said(QT_TRANSLATE_NOOP("DiaryRecord", "Before it was corrected:")));
            html += paragraph(entryText(entry, fahrenheit));
            html += paragraph(QString::fromStdString(entry.note));
        }
    }
    if (const auto messages = diary.messages(); !messages.empty()) {
        html += heading(said(QT_TRANSLATE_NOOP("DiaryRecord", "Notes")));
        for (const records::MessageWritten& message : messages)
            html += paragraph(QStringLiteral("%1, %2: %3")
                                  .arg(message.by.empty() ? said(QT_TRANSLATE_NOOP("DiaryRecord", "Me")) : QString::fromStdString(message.by),
                                       stampText(message.at), QString::fromStdString(message.text)));
    }
    return html;
}

bool writeRecordPdf(const patient::Diary& diary, bool fahrenheit, const QString& file)
{
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly))
        return false;
    {
        QPdfWriter writer(&out);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(20, 20, 20, 20), QPageLayout::Millimeter);
        writer.setTitle(said(QT_TRANSLATE_NOOP("DiaryRecord", "My diary")));
        QTextDocument document;
        document.setDefaultFont(QGuiApplication::font());
        QTextOption option;
        option.setTextDirection(QGuiApplication::layoutDirection());
        document.setDefaultTextOption(option);
        document.setHtml(recordHtml(diary, fahrenheit));
        document.print(&writer);
    }
    return out.flush() && out.error() == QFileDevice::NoError && out.size() > 0;
}

}  // namespace ebbline::diaryapp
