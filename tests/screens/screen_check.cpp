#include "tests/screens/screen_check.h"

#include "tests/screens/in_reach.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QHash>
#include <QImage>
#include <QQmlIncubationController>
#include <QRegularExpression>
#include <QTest>

#include <cmath>

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

}  // namespace

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

QList<QQuickItem*> visibleItems(QQuickWindow& window)
{
    QList<QQuickItem*> found;
    collect(window.contentItem(), found);
    return found;
}

QStringList emptyPage(QQuickWindow& window, const QString& title)
{
    const auto items = visibleItems(window);
    const QQuickItem* page = window.contentItem();
    for (const auto* item : items) {
        if (item->inherits("QQuickLoader") && item->objectName() == QLatin1String("page")) {
            page = item->property("item").value<QQuickItem*>();
        }
    }
    if (page == nullptr) {
        return {QStringLiteral("no page: it does not load")};
    }
    const QRectF whole(0, 0, window.width(), window.height());
    const auto inReach = [&](const QQuickItem* item) {
        return !(inSight(item) & whole).isEmpty() || (item->width() > 0 && item->height() > 0 && canScrollTo(item, QRectF(0, 0, item->width(), item->height())));
    };
    const auto wanted = title.isEmpty() ? page->property("title").toString() : title;
    const bool anyHeading = wanted.isEmpty() || page->property("titleFolded").toBool();
    bool titled = false;
    bool usable = false;
    for (auto* item : items) {
        if (item->inherits("QQuickText") && inReach(item)) {
            const auto words = item->property("text").toString();
            auto* accessible = anyHeading && page->isAncestorOf(item) ? QAccessible::queryAccessibleInterface(item) : nullptr;
            titled = titled || (!wanted.isEmpty() && words == wanted)
                     || (accessible != nullptr && accessible->role() == QAccessible::Heading && !words.trimmed().isEmpty());
        }
        usable = usable || (page->isAncestorOf(item) && (pressable(item) || item->activeFocusOnTab()) && item->isEnabled() && inReach(item));
    }
    QStringList faults;
    if (!titled) {
        faults << QStringLiteral("no title: \"%1\"").arg(wanted);
    }
    if (!usable) {
        faults << QStringLiteral("nothing to use");
    }
    return faults;
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

namespace {

/// px by which the last letter of an Arabic line may reach over its advance: a tenth of an em in the letters that are in use
/// (metrics of Noto Sans Arabic UI, `hmtx` and `glyf`), and hinting. Qt breaks lines without it and counts it afterwards.
qreal overhang(const QQuickItem& words)
{
    const bool wraps = words.property("lineCount").toInt() > 1;
    return wraps && words.property("text").toString().isRightToLeft() ? words.property("font").value<QFont>().pixelSize() / 8.0 : 0;
}

}  // namespace

QStringList cutOff(QQuickWindow& window)
{
    QStringList faults;
    for (auto* item : visibleItems(window)) {
        if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) {
            continue;
        }
        const qreal wide = item->property("contentWidth").toReal();
        const qreal high = item->property("contentHeight").toReal();
        const qreal over = overhang(*item);
        if (wide > item->width() + 1 + over || high > item->height() + 1 || item->property("truncated").toBool()) {
            faults << QStringLiteral("%1: %2 x %3 in %4 x %5").arg(nameOf(item)).arg(wide).arg(high).arg(item->width()).arg(item->height());
            continue;
        }
        const qreal beyond = std::max(0.0, wide - item->width());
        const QRectF words(-beyond, 0, std::min(wide, item->width()) + 2 * beyond, std::min(high, item->height()));
        const auto box = item->mapRectToScene(words);
        if (!canScrollAside(item) && (box.left() < -1 || box.right() > window.width() + 1)) {
            faults << nameOf(item) + QStringLiteral(": sticks out to a side");
        } else if (!canScrollTo(item, words) && (!insideClip(item, box) || box.bottom() > window.height() + 1 || box.top() < -1)) {
            faults << nameOf(item) + QStringLiteral(": hidden behind an edge");
        }
    }
    return faults;
}

QStringList overEdge(QQuickWindow& window)
{
    QStringList faults;
    for (auto* item : visibleItems(window)) {
        const auto box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
        if (pressable(item) && !canScrollAside(item) && (box.left() < -1 || box.right() > window.width() + 1)) {
            faults << QStringLiteral("%1: from %2 to %3").arg(nameOf(item)).arg(box.left()).arg(box.right());
        }
    }
    return faults;
}

/// In a popup that lies over the page, or in the page.
bool isOverPage(const QQuickItem* item)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item->inherits("QQuickPopupItem")) {
            return true;
        }
    }
    return false;
}

QStringList overlapping(QQuickWindow& window)
{
    QList<QQuickItem*> solid;
    for (auto* item : visibleItems(window)) {
        const bool words = item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
        if ((words || pressable(item)) && !inSight(item).isEmpty()) {
            solid << item;
        }
    }
    QStringList faults;
    for (qsizetype i = 0; i < solid.size(); ++i) {
        for (qsizetype j = i + 1; j < solid.size(); ++j) {
            const auto shared = inSight(solid[i]) & inSight(solid[j]);
            // A panel covers what is behind it; that is what it is for.
            if (shared.width() > 1 && shared.height() > 1 && isOverPage(solid[i]) == isOverPage(solid[j]) && !solid[i]->isAncestorOf(solid[j]) && !solid[j]->isAncestorOf(solid[i])) {
                faults << nameOf(solid[i]) + QStringLiteral(" and ") + nameOf(solid[j]);
            }
        }
    }
    return faults;
}

namespace {

QStringList brokenIn(const QList<QQuickItem*>& texts)
{
    // Where a line may end: at spaces, hyphens and soft hyphens, and at any Chinese character.
    static const QRegularExpression gap(QStringLiteral("[\\s\\x{00ad}/\\-\\p{Han}\\x{3000}-\\x{303f}\\x{ff00}-\\x{ffef}]+"));
    QStringList faults;
    for (auto* item : texts) {
        if (!item->inherits("QQuickText") || item->property("lineCount").toInt() < 2) {
            continue;
        }
        const QFontMetricsF metrics(item->property("font").value<QFont>());
        const qreal room = item->width() - item->property("leftPadding").toReal() - item->property("rightPadding").toReal();
        const auto words = item->property("text").toString().split(gap, Qt::SkipEmptyParts);
        const auto before = faults.size();
        for (const auto& word : words) {
            if (metrics.horizontalAdvance(word) > room + 1) {
                faults << QStringLiteral("%1: \"%2\" is %3 wide, its room %4").arg(nameOf(item), word).arg(metrics.horizontalAdvance(word)).arg(room);
            }
        }
        // A letter that reaches over its advance may break a word that would fit by its advance.
        if (faults.size() == before && words.size() == 1 && words.first() == item->property("text").toString().trimmed()) {
            faults << nameOf(item) + QStringLiteral(": one word on several lines");
        }
    }
    return faults;
}

}  // namespace

QStringList brokenWords(QQuickWindow& window)
{
    return brokenIn(visibleItems(window));
}

QStringList brokenActs(QQuickWindow& window)
{
    auto labels = visibleItems(window);
    labels.removeIf([](const QQuickItem* item) { return item->parentItem() == nullptr || !item->parentItem()->inherits("QQuickButton"); });
    return brokenIn(labels);
}

QStringList withoutAction(QQuickWindow& window)
{
    QStringList faults;
    for (auto* item : visibleItems(window)) {
        auto* accessible = pressable(item) ? QAccessible::queryAccessibleInterface(item) : nullptr;
        if (accessible == nullptr) {
            continue;
        }
        const auto role = accessible->role();
        if (role == QAccessible::NoRole || role == QAccessible::Client || role == QAccessible::Grouping) {
            faults << nameOf(item) + QStringLiteral(": no role");
        }
        // What is switched off for now takes no focus, and newer Qt says so.
        if (item->isEnabled() && !accessible->state().focusable) {
            faults << nameOf(item) + QStringLiteral(": can not take the focus");
        }
        if (role == QAccessible::EditableText) {
            continue;
        }
        auto* acts = accessible->actionInterface();
        if (acts == nullptr || !acts->actionNames().contains(QAccessibleActionInterface::pressAction())) {
            faults << nameOf(item) + QStringLiteral(": can not be pressed");
        }
    }
    return faults;
}

double contrast(const QColor& one, const QColor& other)
{
    const auto linear = [](double part) { return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4); };
    const auto luminance = [&](const QColor& colour) {
        return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
    };
    const double first = luminance(one);
    const double second = luminance(other);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

QStringList faint(QQuickWindow& window)
{
    constexpr double least = 4.5;
    const QImage picture = window.grabWindow().convertToFormat(QImage::Format_RGB32);
    const double scale = picture.width() / static_cast<double>(window.width());
    QStringList faults;
    const auto items = visibleItems(window);
    const bool panel = std::any_of(items.begin(), items.end(), isOverPage);
    for (auto* item : items) {
        if (!item->inherits("QQuickText") || item->property("text").toString().trimmed().isEmpty() || !item->isEnabled()) {
            continue;
        }
        // Behind a panel the page is dimmed, and cannot be used.
        if (panel && !isOverPage(item)) {
            continue;
        }
        const auto box = inSight(item);
        const QRect pixels = QRectF(box.topLeft() * scale, box.size() * scale).toRect() & picture.rect();
        if (pixels.width() < 4 || pixels.height() < 4) {
            continue;
        }
        QHash<QRgb, int> counts;
        for (int y = pixels.top(); y <= pixels.bottom(); ++y) {
            for (int x = pixels.left(); x <= pixels.right(); ++x) {
                ++counts[picture.pixel(x, y)];
            }
        }
        QRgb ground = 0;
        int most = 0;
        for (auto it = counts.cbegin(); it != counts.cend(); ++it) {
            if (it.value() > most) {
                most = it.value();
                ground = it.key();
            }
        }
        const auto colour = item->property("color").value<QColor>();
        const double ratio = contrast(colour, QColor(ground));
        if (ratio < least) {
            faults << QStringLiteral("%1: %2 on %3 is %4 to 1").arg(nameOf(item), colour.name(), QColor(ground).name()).arg(ratio, 0, 'f', 2);
        }
    }
    return faults;
}

QString tabUntil(QQuickWindow& window, const QString& name)
{
    constexpr int most = 400;
    settle(window);
    for (int i = 0; i < most; ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
        auto* now = window.activeFocusItem();
        auto* accessible = now == nullptr ? nullptr : QAccessible::queryAccessibleInterface(now);
        if (accessible == nullptr || !accessible->text(QAccessible::Name).startsWith(name)) {
            continue;
        }
        settle(window);
        return inSight(now).height() > 0 ? QString() : name + QStringLiteral(": out of sight");
    }
    return name + QStringLiteral(": the keyboard does not come there");
}

void settle(QQuickWindow& window)
{
    constexpr int fewest = 4;
    constexpr int most = 16;  // a cursor that blinks never comes to rest
    constexpr int slices = 400;
    constexpr int sliceMs = 20;
    auto* incubation = window.incubationController();
    QImage before;
    for (int round = 0; round < most; ++round) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        QTest::qWait(5);
        // Rows that a list makes ahead, out of sight, are half made and without a place meanwhile.
        const bool making = incubation->incubatingObjectCount() > 0;
        for (int slice = 0; slice < slices && incubation->incubatingObjectCount() > 0; ++slice)
            incubation->incubateFor(sliceMs);
        QImage now = window.grabWindow();
        if (round >= fewest - 1 && !making && now == before)
            return;
        before = std::move(now);
    }
}

}  // namespace ebbline::screens
