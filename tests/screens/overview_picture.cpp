// Puts pictures of pages side by side, each at one height: `overview_picture OUT HEIGHT PICTURE...`.
#include <QCoreApplication>
#include <QImage>
#include <QPainter>

#include <cstdio>

namespace {

constexpr int margin = 12;  // px around each picture
constexpr QRgb ground = 0xFFDCD8CC;

}  // namespace

int main(int argc, char* argv[])
{
    const QCoreApplication application(argc, argv);
    const auto words = QCoreApplication::arguments();
    const int height = words.size() < 4 ? 0 : words[2].toInt();
    if (height <= 0) {
        std::fprintf(stderr, "usage: overview_picture OUT HEIGHT PICTURE...\n");
        return 2;
    }
    QList<QImage> pictures;
    int width = margin;
    for (const auto& name : words.mid(3)) {
        const QImage picture = QImage(name).scaledToHeight(height, Qt::SmoothTransformation);
        if (picture.isNull()) {
            std::fprintf(stderr, "overview_picture: %s is no picture\n", qPrintable(name));
            return 1;
        }
        pictures << picture;
        width += picture.width() + margin;
    }
    QImage sheet(width, height + 2 * margin, QImage::Format_RGB32);
    sheet.fill(ground);
    QPainter painter(&sheet);
    int x = margin;
    for (const auto& picture : pictures) {
        painter.drawImage(x, margin, picture);
        x += picture.width() + margin;
    }
    painter.end();
    return sheet.save(words[1]) ? 0 : 1;
}
