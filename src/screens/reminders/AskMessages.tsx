import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { declineMessages, mayAskForMessages } from '../../sensing/messagesAsked.ts';

/** Asks once, when something waits for the first time, whether the phone may show a message when it is over. */
export function AskMessages({ about }: { about: string }) {
  const [open, setOpen] = useState(() => mayAskForMessages());
  if (!open) return null;
  const allow = async () => {
    await Notification.requestPermission();
    setOpen(false);
  };
  const decline = () => {
    declineMessages();
    setOpen(false);
  };
  return (
    <Notice
      kind="note"
      title={`Show a message when “${about}” is over?`}
      action={
        <>
          <Button icon="bell" onPress={() => void allow()}>
            Allow messages
          </Button>
          <Button onPress={decline}>No</Button>
        </>
      }
    >
      It comes only while the phone lets this app run. Use the calendar for a sure ring.
    </Notice>
  );
}
