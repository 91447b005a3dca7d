#include "app/fonts/fonts.h"

#include <QDir>
#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace ebbline::app {

void loadFonts()
{
    const QDir folder(QStringLiteral(":/fonts"));
    for (const QString& file : folder.entryList(QDir::Files))
        QFontDatabase::addApplicationFont(folder.filePath(file));
    QFont font(QStringLiteral("Noto Sans"));
    font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic")});
    QGuiApplication::setFont(font);
}

}  // namespace ebbline::app
