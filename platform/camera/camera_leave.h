#pragma once
/// \file
/// Leave to use the camera, asked for at the moment when it is needed and not before.

#include <QObject>

#include <functional>

namespace ebbline::camera {

/// Answers on the thread of `context`, at once or after the person was asked; never, if `context` is gone by
/// then. Which of its two definitions is built depends on the device: only phones ask.
void askForCamera(QObject* context, std::function<void(bool may)> answer);

}  // namespace ebbline::camera
