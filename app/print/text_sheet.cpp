#include "print/text_sheet.h"

#include "print/lesson_facts.h"
#include "print/notes.h"
#include "print/page_frame.h"
#include "print/pdf_writer.h"
#include "print/print_text.h"

namespace rangeline {

TextSheet::TextSheet(const TimelineInput& input, const PageLayout& layout, const QString& name)
    : input_(input),
      layout_(layout),
      name_(name),
      facts_(Printed::tr("%1  ·  %2")
                 .arg(q(input.text.lesson.head.name),
                      lessonFacts(input, Printed::tr("listed with the station timeline")))),
      fonts_(TimelineStyle::paper(), pixelsPerPoint) {
    sheet_.title = Printed::tr("%1: %2").arg(q(input.text.lesson.head.name), name.toLower());
    sheet_.style = TimelineStyle::paper();
}

void TextSheet::section(const QString& title, const std::function<void(TextFlow& flow)>& fill) {
    const PageFrame frame(layout_, fonts_, title, facts_);
    TextFlow flow(fonts_, frame.body(), [&] {
        Picture page;
        frame.addHead(page);
        return page;
    });
    fill(flow);
    for (Picture& page : flow.takePages()) {
        sheet_.pages.push_back(std::move(page));
    }
}

SheetPages TextSheet::finish() {
    if (sheet_.pages.empty()) {
        section(name_, [](TextFlow& flow) {
            flow.paragraph(Printed::tr("There is nothing for this sheet in the lesson."));
        });
    }
    const PageFrame frame(layout_, fonts_, name_, facts_);
    const QString note = guidanceNote(input_.text.lesson.head.profile);
    const int pages = static_cast<int>(sheet_.pages.size());
    for (int page = 0; page < pages; ++page) {
        frame.addFoot(sheet_.pages[static_cast<std::size_t>(page)], note, page + 1, pages);
    }
    return std::move(sheet_);
}

}  // namespace rangeline
