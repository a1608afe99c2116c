import {
  type Disposable,
  ProcessExecution,
  Task,
  type TaskDefinition,
  TaskGroup,
  TaskScope,
  tasks,
} from 'vscode'

const TYPE = 'floorscribe'
const PROBLEM_MATCHER = '$floorscribe'

/** As it stands in a folder's tasks: `{ "type": "floorscribe", "files": ["jobs/heron.floor"] }`. */
interface CheckDefinition extends TaskDefinition {
  readonly files?: readonly unknown[]
}

/** The command line's `check` as a task; `program` is the one that comes with the extension. */
export function provideCheckTasks(program: string): Disposable {
  return tasks.registerTaskProvider(TYPE, {
    provideTasks: () => [checkTask({ type: TYPE }, program, TaskScope.Workspace)],
    resolveTask: ({ definition, scope }) =>
      checkTask(definition as CheckDefinition, program, scope ?? TaskScope.Workspace),
  })
}

/** Runs on the Node that the editor runs its extensions on, so that none need be installed. */
function checkTask(definition: CheckDefinition, program: string, scope: Task['scope'] & {}): Task {
  const files = (definition.files ?? []).filter((file) => typeof file === 'string')
  const named = files.length > 0 ? files : [`\${file}`]
  const run = new ProcessExecution(process.execPath, [program, 'check', ...named], {
    env: { ELECTRON_RUN_AS_NODE: '1' },
  })
  const name = files.length > 0 ? `check ${files.join(', ')}` : 'check the open file'
  const task = new Task(definition, scope, name, 'floorscribe', run, PROBLEM_MATCHER)
  task.group = TaskGroup.Test
  task.detail = 'Says what is wrong, doubtful or still to come'
  return task
}
