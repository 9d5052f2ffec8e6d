#pragma once

#include "app/console.h"

#include <QStringList>

namespace riband::app {

// The verbs of the command line, each in a file of its own. They take what stands behind the verb and throw
// BadInput, HelpAsked, StoreError or Refusal; main tells these to the person.

Exit read(const QStringList& arguments);
Exit plan(const QStringList& arguments);
Exit suggest(const QStringList& arguments);
/// Fits worth tables.
Exit learn(const QStringList& arguments);
Exit identify(const QStringList& arguments);
Exit drive(const QStringList& arguments);
Exit verify(const QStringList& arguments);
Exit backup(const QStringList& arguments);
Exit restore(const QStringList& arguments);
Exit count(const QStringList& arguments);
Exit importTable(const QStringList& arguments);
Exit receive(const QStringList& arguments);
Exit move(const QStringList& arguments);
Exit exportTable(const QStringList& arguments);
/// Talks in JSON lines with a program that plays the shop.
Exit advise(const QStringList& arguments);
Exit simulate(const QStringList& arguments);
/// Ctrl-C stops it.
Exit replay(const QStringList& arguments);
/// Paints: needs a QApplication.
Exit report(const QStringList& arguments);
/// Paints: needs a QApplication.
Exit gauge(const QStringList& arguments);
/// Paints its PDF: needs a QApplication.
Exit report(const QStringList& arguments);
/// Paints papers and pages: needs a QApplication.
Exit demo(const QStringList& arguments);

} // namespace riband::app
