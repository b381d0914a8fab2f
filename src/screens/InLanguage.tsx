/**
 * The page in the language that the view asks for: its texts are loaded, then all that shows words is drawn anew. The plate,
 * its history and its view live outside and stay.
 */
import { Fragment, useEffect, useRef, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { language } from '../language/index';
import { languageOf, speakWhole } from '../language/load';
import type { Workbench } from '../store/types';

/** What had the focus is drawn anew: it goes to the button of the menu that the language was chosen in. */
function useReturnedFocus(drawn: string): void {
  const first = useRef(drawn);
  useEffect(() => {
    if (first.current === drawn) return undefined;
    first.current = drawn;
    const soon = setTimeout(() => {
      if (document.activeElement === document.body)
        document.querySelector<HTMLElement>('[data-testid=view-menu]')?.focus();
    }, 100);
    return () => clearTimeout(soon);
  }, [drawn]);
}

interface InLanguageProps {
  readonly bench: Workbench;
  readonly children: ReactNode;
  /** What is drawn stands in the page. */
  onDrawn(): void;
}

/** Tells the page's readers which language they hear, and draws `children` anew when it changes. */
export function InLanguage({ bench, children, onDrawn }: InLanguageProps) {
  const choice = useStore(bench.store, (state) => state.view.language);
  const [drawn, setDrawn] = useState(language);
  useEffect(onDrawn, [onDrawn]);
  useEffect(() => {
    document.documentElement.lang = drawn;
  }, [drawn]);
  useEffect(() => {
    const wanted = languageOf(choice, navigator.languages);
    if (wanted === language()) return undefined;
    let gone = false;
    speakWhole(wanted, () => !gone).then(
      () => gone || setDrawn(language()),
      () => {
        if (gone) return;
        bench.setView({ language: language() });
        bench.notify({ code: 'language-not-loaded', params: {} });
      },
    );
    return () => {
      gone = true;
    };
  }, [choice, bench]);
  useReturnedFocus(drawn);
  return <Fragment key={drawn}>{children}</Fragment>;
}
