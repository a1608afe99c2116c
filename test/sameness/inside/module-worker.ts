import { answer, loadModule } from './in-browser.ts'
import { serveOrders } from './worker.ts'

serveOrders((order) => answer('module worker', order, loadModule))
