#include "core/records/roles.h"

namespace ebbline::records {

bool allows(Role role, Task task)
{
    switch (role) {
    case Role::inCharge: return true;
    case Role::practitioner:
        return task == Task::treat || task == Task::close || task == Task::phones || task == Task::numbers || task == Task::figures;
    case Role::onCall: return task == Task::close || task == Task::phones;
    case Role::assistant: return task == Task::phones;
    case Role::machines: return task == Task::desks || task == Task::keep;
    }
    return false;
}

}  // namespace ebbline::records
