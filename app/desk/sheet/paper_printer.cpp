#include "app/desk/sheet/paper_printer.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

namespace ebbline::deskapp {

PaperPrinter::PaperPrinter(Workplace& workplace, QObject* parent) : QObject(parent)
{
    connect(&workplace, &Workplace::openChanged, this, &PaperPrinter::forget);
}

PaperPrinter::~PaperPrinter()
{
    forget();
}

void PaperPrinter::forget()
{
    delete m_dialog.data();
}

bool PaperPrinter::anyPrinter()
{
    return !QPrinterInfo::availablePrinterNames().isEmpty();
}

void PaperPrinter::print(const QString& title, QPageSize::PageSizeId paper, LayOut layOut, Said said, bool printers)
{
    forget();
    if (!printers) {
        said(tr("No printer is set up on this computer. Set one up, or save the pages as a file."));
        return;
    }
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);
    printer->setPageSize(QPageSize(paper));
    printer->setDocName(title);  // shows in the print queue: no name of a patient
    printer->setCreator(QStringLiteral("Ebbline"));
    m_dialog = new QPrintDialog(printer.get());
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    m_dialog->setWindowTitle(tr("Print"));
    // A file is what "Save" is for, and says that it is not encrypted.
    m_dialog->setOption(QAbstractPrintDialog::PrintToFile, false);
    connect(m_dialog.data(), &QDialog::accepted, this, [this, printer, layOut = std::move(layOut), said = std::move(said)] {
        const auto printed = paintPages(*printer, layOut);
        const bool taken = printed && printer->printerState() != QPrinter::Error && printer->printerState() != QPrinter::Aborted;
        said(taken ? tr("Sent to %1. Fetch it there; this desk wrote no file.").arg(printer->printerName())
                   : tr("The printer did not take it. Look whether it is on and has paper, then print again."));
    });
    m_dialog->open();
}

}  // namespace ebbline::deskapp
