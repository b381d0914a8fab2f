/**
 * The page in the language that the view asks for: its texts are loaded, then all that shows words is drawn anew. The plate,
 * its history and its view live outside and stay.
 */
import { Fragment, useEffect, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { language } from '../language/index';
import { languageOf, restOfTexts, speak } from '../language/load';
import type { Workbench } from '../store/types';

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
    if (wanted === language()) return;
    speak(wanted)
      .then(restOfTexts)
      .then(
        () => setDrawn(language()),
        () => bench.notify({ code: 'language-not-loaded', params: {} }),
      );
  }, [choice, bench]);
  return <Fragment key={drawn}>{children}</Fragment>;
}
