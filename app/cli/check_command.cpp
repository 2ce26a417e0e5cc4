#include "cli/check_command.h"

#include "cli/findings_text.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "text/machine_form.h"

namespace rangeline {

Exit runCheck(const Invocation& invocation) {
    const auto opened = openLesson(invocation);
    if (!opened) {
        return Exit::Unusable;
    }
    if (invocation.has("--json")) {
        say(QJsonObject{{"works", opened->works()},
                        {"findings", toMachine(opened->findings(), opened->text())}});
    } else {
        say(findingsText(*opened, terminalWidth()));
    }
    return opened->works() ? Exit::Fine : Exit::Wrong;
}

}  // namespace rangeline
