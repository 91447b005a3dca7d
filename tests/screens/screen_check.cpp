#include "tests/screens/screen_check.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QTest>

namespace ebbline::screens {

namespace {

void collect(QQuickItem* item, QList<QQuickItem*>& found)
{
    if (!item->isVisible() || item->width() < 0 || item->opacity() <= 0) {
        return;
    }
    found.append(item);
    const auto children = item->childItems();
    for (auto* child : children) {
        collect(child, found);
    }
}

QString nameOf(const QQuickItem* item)
{
    QString text = QString::fromLatin1(item->metaObject()->className()).section(QLatin1String("_QML"), 0, 0);
    if (!item->objectName().isEmpty()) {
        text += QLatin1Char('#') + item->objectName();
    }
    const auto words = item->property("text").toString();
    if (!words.isEmpty()) {
        text += QStringLiteral(" \"%1\"").arg(words.left(60));
    }
    return text;
}

bool pressable(const QQuickItem* item)
{
    return item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextField") || item->inherits("QQuickTextArea")
           || item->inherits("QQuickComboBox");
}

/// A Flickable between the item and the window that can bring it into sight.
bool canScrollTo(const QQuickItem* item)
{
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->inherits("QQuickFlickable") && parent->property("contentHeight").toReal() > parent->height()) {
            return true;
        }
    }
    return false;
}

bool insideClip(const QQuickItem* item, const QRectF& box)
{
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->clip()) {
            const auto frame = parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height())).adjusted(-1, -1, 1, 1);
            if (!frame.contains(box)) {
                return false;
            }
        }
    }
    return true;
}

}  // namespace

QList<QQuickItem*> visibleItems(QQuickWindow& window)
{
    QList<QQuickItem*> found;
    collect(window.contentItem(), found);
    return found;
}

QStringList withoutName(QQuickWindow& window)
{
    QStringList faults;
    for (auto* item : visibleItems(window)) {
        auto* accessible = QAccessible::queryAccessibleInterface(item);
        if (accessible == nullptr || !accessible->isValid()) {
            if (pressable(item)) {
                faults << nameOf(item) + QStringLiteral(": nothing for a screen reader");
            }
            continue;
        }
        switch (accessible->role()) {
        case QAccessible::Button:
        case QAccessible::CheckBox:
        case QAccessible::RadioButton:
        case QAccessible::ComboBox:
        case QAccessible::EditableText:
        case QAccessible::SpinBox:
        case QAccessible::PageTab:
        case QAccessible::List:
        case QAccessible::ListItem:
        case QAccessible::Chart:
        case QAccessible::Canvas:
        case QAccessible::Graphic:
        case QAccessible::Slider:
        case QAccessible::AlertMessage:
            if (accessible->text(QAccessible::Name).isEmpty()) {
                faults << nameOf(item) + QStringLiteral(": no name ") + QString::number(accessible->role()) + QStringLiteral(" / ") + accessible->text(QAccessible::Description);
            }
            break;
        default:
            break;
        }
    }
    return faults;
}

QStringList smallTargets(QQuickWindow& window, qreal least)
{
    QStringList faults;
    for (const auto* item : visibleItems(window)) {
        if (pressable(item) && (item->width() < least || item->height() < least)) {
            faults << QStringLiteral("%1: %2 x %3").arg(nameOf(item)).arg(item->width()).arg(item->height());
        }
    }
    return faults;
}

QStringList cutOff(QQuickWindow& window)
{
    QStringList faults;
    for (auto* item : visibleItems(window)) {
        if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) {
            continue;
        }
        const qreal wide = item->property("contentWidth").toReal();
        const qreal high = item->property("contentHeight").toReal();
        if (wide > item->width() + 1 || high > item->height() + 1 || item->property("truncated").toBool()) {
            faults << QStringLiteral("%1: %2 x %3 in %4 x %5").arg(nameOf(item)).arg(wide).arg(high).arg(item->width()).arg(item->height());
            continue;
        }
        const auto box = item->mapRectToScene(QRectF(0, 0, std::min(wide, item->width()), std::min(high, item->height())));
        if (box.left() < -1 || box.right() > window.width() + 1) {
            faults << nameOf(item) + QStringLiteral(": sticks out to a side");
        } else if (!canScrollTo(item) && (!insideClip(item, box) || box.bottom() > window.height() + 1 || box.top() < -1)) {
            faults << nameOf(item) + QStringLiteral(": hidden behind an edge");
        }
    }
    return faults;
}

void settle(QQuickWindow& window)
{
    for (int round = 0; round < 4; ++round) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        QTest::qWait(5);
        window.grabWindow();
    }
}

}  // namespace ebbline::screens
