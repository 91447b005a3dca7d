#include "platform/android/android_ringer.h"

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>
#include <QMetaObject>

#include <mutex>

namespace ebbline::android {

namespace {

using notifications::RingerEvent;
using notifications::SystemLeave;

constexpr const char* bridge = "invalid/ebbline/diary/Bridge";

/// The system's default cap for the alarms of one program: DEFAULT_MAX_ALARMS_PER_UID of AlarmManagerService
/// in the Android Open Source Project. A maker may set another; what is really pending is read back.
constexpr std::size_t mostAlarms = 500;

/// Who hears. The phone tells from threads of its own, also while the program is being ended.
struct Listener {
    std::mutex mutex;
    std::function<void(RingerEvent)> hear;
};

Listener& listener()
{
    static Listener one;
    return one;
}

/// Called by Bridge.told(): carries the event over to the thread of the program.
void told(JNIEnv*, jclass, jint what)
{
    if (what < static_cast<jint>(RingerEvent::openTouched) || what > static_cast<jint>(RingerEvent::zoneChanged))
        return;
    auto* program = QCoreApplication::instance();
    if (program == nullptr)
        return;
    QMetaObject::invokeMethod(
        program,
        [event = static_cast<RingerEvent>(what)] {
            std::function<void(RingerEvent)> hear;
            {
                const std::lock_guard guard(listener().mutex);
                hear = listener().hear;
            }
            if (hear)
                hear(event);
        },
        Qt::QueuedConnection);
}

class AndroidRinger final : public notifications::Ringer {
public:
    ~AndroidRinger() override
    {
        QJniObject::callStaticMethod<void>(bridge, "listen", "(Z)V", jboolean(false));
        const std::lock_guard guard(listener().mutex);
        listener().hear = nullptr;
    }

    void listen(std::function<void(RingerEvent)> hear) override
    {
        {
            const std::lock_guard guard(listener().mutex);
            listener().hear = std::move(hear);
        }
        QJniEnvironment environment;
        const JNINativeMethod methods[] = {{"told", "(I)V", reinterpret_cast<void*>(&told)}};
        if (environment.registerNativeMethods(bridge, methods, 1))
            QJniObject::callStaticMethod<void>(bridge, "listen", "(Z)V", jboolean(true));
    }

    SystemLeave leave() const override
    {
        switch (QJniObject::callStaticMethod<jint>(bridge, "leave", "()I")) {
        case static_cast<jint>(SystemLeave::notAsked): return SystemLeave::notAsked;
        case static_cast<jint>(SystemLeave::granted): return SystemLeave::granted;
        default: return SystemLeave::denied;
        }
    }
    void ask() override { QJniObject::callStaticMethod<void>(bridge, "ask", "()V"); }
    void openSettings() override { QJniObject::callStaticMethod<void>(bridge, "openSettings", "()V"); }
    bool isPunctual() const override { return QJniObject::callStaticMethod<jboolean>(bridge, "isPunctual", "()Z") != 0; }
    void openPunctualSettings() override { QJniObject::callStaticMethod<void>(bridge, "openPunctualSettings", "()V"); }

    std::size_t capacity() const override { return mostAlarms; }

    Result<std::vector<aftercare::Booking>> pending() const override
    {
        const auto text = QJniObject::callStaticObjectMethod(bridge, "pending", "()Ljava/lang/String;");
        if (!text.isValid())
            return fail(Reason::storageFailed, "bells: the phone did not say what it holds");
        return aftercare::readBookings(text.toString().toStdString());
    }

    Done book(const aftercare::Booking& booking) override { return change("book", booking); }
    Done cancel(const aftercare::Booking& booking) override { return change("cancel", booking); }

    void setWords(const notifications::BellWords& words) override
    {
        const auto name = QJniObject::fromString(words.name);
        const auto title = QJniObject::fromString(words.title);
        const auto text = QJniObject::fromString(words.text);
        const auto asksToOpen = QJniObject::fromString(words.asksToOpen);
        const auto open = QJniObject::fromString(words.open);
        const auto later = QJniObject::fromString(words.later);
        QJniObject::callStaticMethod<void>(
            bridge, "setWords",
            "(Ljava/lang/String;Ljava/lang/String;Ljava/lang/String;Ljava/lang/String;Ljava/lang/String;Ljava/lang/String;)V",
            name.object<jstring>(), title.object<jstring>(), text.object<jstring>(), asksToOpen.object<jstring>(),
            open.object<jstring>(), later.object<jstring>());
    }
    bool ringNow() override { return QJniObject::callStaticMethod<jboolean>(bridge, "ringNow", "()Z") != 0; }

private:
    static Done change(const char* act, const aftercare::Booking& booking)
    {
        if (QJniObject::callStaticMethod<jboolean>(bridge, act, "(JZ)Z", jlong(booking.at.time_since_epoch().count()),
                                                   jboolean(booking.asksToOpen))
            == 0)
            return fail(Reason::refused, "bells: the phone did not take it");
        return {};
    }
};

}  // namespace

std::unique_ptr<notifications::Ringer> makeRinger()
{
    return std::make_unique<AndroidRinger>();
}

}  // namespace ebbline::android
