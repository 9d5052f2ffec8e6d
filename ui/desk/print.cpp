#include "ui/desk/print.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

namespace riband::ui {

bool printPaper(const QPageSize& size, const std::function<void(QPagedPaintDevice&)>& paint, QWidget* at) {
    QPrinter printer{QPrinter::HighResolution};
    printer.setPageSize(size);
    printer.setFullPage(true);
    QPrintDialog dialog{&printer, at};
    if (dialog.exec() != QDialog::Accepted) return false;
    paint(printer);
    return true;
}

bool printerIsSetUp() { return !QPrinterInfo::defaultPrinter().isNull(); }

} // namespace riband::ui
