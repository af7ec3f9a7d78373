import { afterEach, beforeEach } from 'vitest';
import { openPhone, type Phone, type Served, serveDist } from './product.ts';

/** The server and the phone of the test that runs. */
export let served: Served;
export let phone: Phone;

/** Each test of the file gets a server of its own and a phone that was never there. */
export function eachOnItsOwnPhone(): void {
  beforeEach(async () => {
    served = await serveDist();
    phone = await openPhone(served.origin);
  });

  afterEach(async () => {
    await phone.close();
    await served.stop();
  });
}
