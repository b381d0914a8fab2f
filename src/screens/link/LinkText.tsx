/**
 * A link as a person hands it on: its text, whole whatever its length, how long it is, the button that copies it, and the
 * file beside it where it is too long for mail and chat.
 */
import { NARROW_SPACE } from '../../units/format';
import { t, type Text } from '../../language/index';
import { useRef, useState } from 'react';
import { messageAdvice, messageText } from '../../layout/messages';
import { COMFORTABLE_LINK, type AnyLinked } from '../../link/index';
import { useSaid } from '../../panels/spoken/say';
import { copyText, type Copied } from './copyText';
import { useLink } from './useLink';
import './link.css';

/** What some browsers still open [memory: Chromium about 2,000,000, others far less]. */
const LONGEST_OPENED = 60_000;
/** Thousands apart by a narrow blank, which no language takes for a decimal sign. */
const counted = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, NARROW_SPACE);

interface LinkTextProps {
  readonly linked: AnyLinked;
  /** "Save layout file", "Save 2 layout files" */
  readonly file: string;
  onSave(): void;
}

/** Why a file is better, in one sentence; null for a link that goes anywhere. */
function whyFile(length: number): string | null {
  if (length <= COMFORTABLE_LINK) return null;
  return t(
    length > LONGEST_OPENED
      ? 'Over {limit} characters: mail and chat break it, and some browsers do not open it. Hand over the file.'
      : 'Over {limit} characters: many mail and chat programs break it. Hand over the file, or try the link first.',
    { limit: counted(COMFORTABLE_LINK) },
  );
}

const COPIED: Readonly<Record<Copied, Text>> = {
  copied: 'Copied.',
  selected: 'The browser does not let the page copy: press Ctrl+C, the link is selected.',
};

/** Only this computer opens such an address. */
const isLocal = (address: string): boolean =>
  /^(file:|https?:\/\/(localhost|127\.\d+\.\d+\.\d+|\[::1\])[:/])/.test(address);

function Copying({
  address,
  why,
  file,
  onSave,
}: { readonly address: string; readonly why: string | null } & Omit<LinkTextProps, 'linked'>) {
  const field = useRef<HTMLTextAreaElement>(null);
  const [copied, setCopied] = useState<Copied | null>(null);
  useSaid(copied && t(COPIED[copied]));
  const copy = async (): Promise<void> => {
    if (field.current) setCopied(await copyText(field.current));
  };
  return (
    <>
      <textarea
        ref={field}
        readOnly
        rows={4}
        className="input link-text"
        aria-label={t('link')}
        data-testid="link-text"
        value={address}
        onFocus={({ target }) => target.select()}
      />
      <div className="row link-row">
        <button
          type="button"
          className="button"
          data-main={why === null || undefined}
          data-testid="link-copy"
          onClick={() => void copy()}
        >
          {t('Copy link')}
        </button>
        {why !== null && (
          <button type="button" className="button" data-main data-testid="link-file" onClick={onSave}>
            {file}
          </button>
        )}
        <span data-testid="link-copied">{copied === null ? '' : t(COPIED[copied])}</span>
      </div>
    </>
  );
}

export function LinkText({ linked, file, onSave }: LinkTextProps) {
  const address = useLink(linked);
  if (address === null) return <p className="hint">{t('The link is being written …')}</p>;
  if (!address.ok)
    return (
      <>
        <p className="field-fault" role="alert">
          {messageText(address.fault.code, address.fault.params)}{' '}
          {messageAdvice(address.fault.code, address.fault.params)}
        </p>
        <button type="button" className="button" data-main onClick={onSave}>
          {file}
        </button>
      </>
    );
  const why = whyFile(address.value.length);
  return (
    <>
      <p>
        <span data-testid="link-length">
          {t('{count} characters.', { count: counted(address.value.length) })}
        </span>{' '}
        {why !== null && <b data-testid="link-long">{why}</b>}
      </p>
      <Copying address={address.value} why={why} file={file} onSave={onSave} />
      {isLocal(address.value) && (
        <p className="hint">
          {t(
            'This page comes from this computer, where nobody else can open the address. Others put the part from “#” on behind the address of their own Evenplate.',
          )}
        </p>
      )}
      <p className="hint">
        {t(
          'A browser does not send what stands after “#” to a server, and this page is built so that it can make no connection: the geometry stays in your browser until you pass the link on. Whoever has the link has the plate, and so has every service that carries it.',
        )}
      </p>
    </>
  );
}
