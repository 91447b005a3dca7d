#include "platform/camera/camera_leave.h"

#include <QCoreApplication>
#include <QPermissions>

namespace ebbline::camera {

/// Phones ask the person, with the words of the package's own papers. Needs Qt 6.5.
void askForCamera(QObject* context, std::function<void(bool may)> answer)
{
    const QCameraPermission leave;
    if (qApp->checkPermission(leave) != Qt::PermissionStatus::Undetermined)
        return answer(qApp->checkPermission(leave) == Qt::PermissionStatus::Granted);
    qApp->requestPermission(leave, context, [answer = std::move(answer)](const QPermission& said) {
        answer(said.status() == Qt::PermissionStatus::Granted);
    });
}

}  // namespace ebbline::camera
