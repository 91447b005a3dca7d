#pragma once
/// \file
/// Asks for a printer and prints pages on it, so that no file of ours lies on the disk. The computer's own print queue
/// holds what is printed until it is done: that is its operator's to keep.

#include "app/desk/model/workplace.h"
#include "app/desk/sheet/pages.h"

#include <QObject>
#include <QPageSize>
#include <QPointer>

class QPrintDialog;

namespace ebbline::deskapp {

class PaperPrinter : public QObject {
    Q_OBJECT

public:
    /// Says in one sentence what came of it.
    using Said = std::function<void(const QString& sentence)>;

    /// A desk that locks takes an open question away, with the pages behind it.
    explicit PaperPrinter(Workplace& workplace, QObject* parent = nullptr);
    ~PaperPrinter() override;

    static bool anyPrinter();
    /// Asks which printer, then prints; says at once if there is none. Not modal to this call. Nothing is said of a
    /// question that was left. `printers`: whether there is one.
    void print(const QString& title, QPageSize::PageSizeId paper, LayOut layOut, Said said, bool printers = anyPrinter());

private:
    void forget();

    QPointer<QPrintDialog> m_dialog;
};

}  // namespace ebbline::deskapp
