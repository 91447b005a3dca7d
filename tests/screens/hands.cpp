#include "tests/screens/hands.h"

#include "tests/screens/screen_check.h"

#include <QAccessible>
#include <QPointingDevice>
#include <QTest>

#include <algorithm>
#include <optional>

namespace ebbline::screens {

namespace {

bool usable(const QQuickItem* item)
{
    return item->isEnabled()
           && (item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextField") || item->inherits("QQuickTextArea"));
}

/// The part of the window that shows the page, above the edge of whatever clips it.
bool inSight(const QQuickItem* item, const QQuickWindow& window)
{
    QRectF room(0, 0, window.width(), window.height());
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->clip())
            room &= parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height()));
    }
    const auto box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    // What is higher than its room shows at least its beginning.
    return room.adjusted(-1, -1, 1, 1).contains(box.height() > room.height() ? QRectF(box.topLeft(), QSizeF(box.width(), 48)) : box);
}

bool showsFocus(const QQuickItem* item)
{
    const auto children = item->childItems();
    for (const auto* child : children) {
        const bool ring = QLatin1String(child->metaObject()->className()).startsWith(QLatin1String("FocusRing_"));
        if (child->isVisible() && (ring || showsFocus(child)))
            return true;
    }
    return false;
}

}  // namespace

QQuickItem* named(QQuickWindow& window, const QString& name)
{
    for (auto* item : visibleItems(window)) {
        auto* accessible = usable(item) ? QAccessible::queryAccessibleInterface(item) : nullptr;
        if (accessible != nullptr && accessible->text(QAccessible::Name) == name)
            return item;
    }
    return nullptr;
}

QQuickItem* spoken(QQuickWindow& window, const QString& words)
{
    for (auto* item : visibleItems(window)) {
        auto* accessible = item->inherits("QQuickText") && item->height() > 0 ? QAccessible::queryAccessibleInterface(item) : nullptr;
        // What is ignored has an interface too, but its parent does not count it.
        if (accessible != nullptr && accessible->text(QAccessible::Name) == words && accessible->parent() != nullptr
            && accessible->parent()->indexOfChild(accessible) >= 0)
            return item;
    }
    return nullptr;
}

namespace {

/// Scrolls there. \returns the middle of the control with this name; nothing if it cannot be hit.
std::optional<QPoint> middleOf(QQuickWindow& window, const QString& name)
{
    auto* item = named(window, name);
    if (item == nullptr)
        return std::nullopt;
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->inherits("QQuickFlickable") && !inSight(item, window)) {
            auto* content = parent->property("contentItem").value<QQuickItem*>();
            const double most = std::max(0.0, parent->property("contentHeight").toDouble() - parent->height());
            parent->setProperty("contentY", std::clamp(item->mapToItem(content, QPointF(0, 0)).y() - 16, 0.0, most));
        }
    }
    settle(window);
    if (!inSight(item, window))
        return std::nullopt;
    return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
}

}  // namespace

bool touch(QQuickWindow& window, const QString& name)
{
    static QPointingDevice* const finger = QTest::createTouchDevice();
    const auto at = middleOf(window, name);
    if (!at)
        return false;
    QTest::touchEvent(&window, finger).press(0, *at, &window);
    QTest::touchEvent(&window, finger).release(0, *at, &window);
    settle(window);
    return true;
}

bool click(QQuickWindow& window, const QString& name)
{
    const auto at = middleOf(window, name);
    if (at) {
        QTest::mouseClick(&window, Qt::LeftButton, Qt::NoModifier, *at);
        settle(window);
    }
    return at.has_value();
}

bool tabTo(QQuickWindow& window, const QString& name)
{
    constexpr int patience = 120;
    for (int i = 0; i < patience; ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
        settle(window);
        auto* now = window.activeFocusItem();
        if (now == nullptr || !usable(now))
            continue;
        if (!showsFocus(now) || !inSight(now, window))
            return false;
        // By its name: a text within the control may bear the same one.
        auto* accessible = QAccessible::queryAccessibleInterface(now);
        if (accessible != nullptr && accessible->text(QAccessible::Name) == name)
            return true;
    }
    return false;
}

bool press(QQuickWindow& window, const QString& name)
{
    auto* item = named(window, name);
    auto* accessible = item != nullptr ? QAccessible::queryAccessibleInterface(item) : nullptr;
    auto* acts = accessible != nullptr ? accessible->actionInterface() : nullptr;
    if (acts == nullptr || !acts->actionNames().contains(QAccessibleActionInterface::pressAction()))
        return false;
    acts->doAction(QAccessibleActionInterface::pressAction());
    settle(window);
    return true;
}

bool write(QQuickWindow& window, const QString& name, const QString& text)
{
    auto* item = named(window, name);
    auto* accessible = item != nullptr ? QAccessible::queryAccessibleInterface(item) : nullptr;
    if (accessible == nullptr || accessible->role() != QAccessible::EditableText)
        return false;
    accessible->setText(QAccessible::Value, text);
    settle(window);
    return true;
}

void typeKeys(QQuickWindow& window, const QString& text)
{
    for (const QChar letter : text)
        QTest::keyClick(&window, letter.toLatin1());
    settle(window);
}

namespace {

/// Types where `there` leads.
Hands typing(QQuickWindow& window, std::function<bool(const QString&)> use, std::function<bool(const QString&)> there)
{
    return {std::move(use), [&window, there = std::move(there)](const QString& name, const QString& text) {
                if (!there(name))
                    return false;
                typeKeys(window, text);
                return true;
            }};
}

Hands keyboard(QQuickWindow& window, Qt::Key key)
{
    const auto there = [&window](const QString& name) { return tabTo(window, name); };
    return typing(window, [&window, there, key](const QString& name) {
        if (!there(name))
            return false;
        QTest::keyClick(&window, key);
        settle(window);
        return true;
    }, there);
}

}  // namespace

Hands hands(int kind, QQuickWindow& window)
{
    const auto finger = [&window](const QString& name) { return touch(window, name); };
    const auto mouse = [&window](const QString& name) { return click(window, name); };
    switch (kind) {
    case 0: return typing(window, finger, finger);
    case 1: return keyboard(window, Qt::Key_Space);
    case 2: return keyboard(window, Qt::Key_Return);
    case 4: return typing(window, mouse, mouse);
    default:
        return {[&window](const QString& name) { return press(window, name); },
                [&window](const QString& name, const QString& text) { return write(window, name, text); }};
    }
}

}  // namespace ebbline::screens
