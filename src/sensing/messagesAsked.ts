const DECLINED = 'pinchbolt:messages-declined';

type AnswerPlace = Pick<Storage, 'getItem' | 'setItem'>;

/** Whether the phone has yet to be asked for leave to show messages. */
export function mayAskForMessages(
  permission: NotificationPermission | undefined = globalThis.Notification?.permission,
  place: AnswerPlace = localStorage,
): boolean {
  if (permission !== 'default') return false;
  try {
    return place.getItem(DECLINED) === null;
  } catch {
    // Where nothing can be kept, the answer would be asked for again and again.
    return false;
  }
}

/** The person does not want messages; the settings still offer them. */
export function declineMessages(place: AnswerPlace = localStorage): void {
  try {
    place.setItem(DECLINED, 'yes');
  } catch {
    // Then it is not asked either.
  }
}
