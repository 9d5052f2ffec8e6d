#pragma once

#include <QPageSize>

#include <functional>

class QPagedPaintDevice;
class QWidget;

namespace riband::ui {

/// Prints by the usual dialog, on the whole of the paper. False if the person left the dialog.
bool printPaper(const QPageSize& size, const std::function<void(QPagedPaintDevice&)>& paint, QWidget* at);

/// There is a printer to print on without asking where.
bool printerIsSetUp();

} // namespace riband::ui
