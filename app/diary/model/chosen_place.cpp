#include "app/diary/model/chosen_place.h"

#include <QFile>
#include <QSaveFile>

namespace ebbline::diaryapp {

QString nameOfChosen(const QUrl& chosen)
{
    return chosen.isLocalFile() ? chosen.toLocalFile() : chosen.toString();
}

bool writeChosen(const QString& name, const QByteArray& bytes)
{
    if (name.contains(QLatin1String("://"))) {
        QFile file(name);
        return file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size() && file.flush();
    }
    QSaveFile file(name);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

}  // namespace ebbline::diaryapp
