package bitterend.cli;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C while the process is already ending, which the JVM passes over. Signals are asked for by name, as not every JVM has
 * them; where there are none, or Ctrl-C is kept from the JVM, all is as before.
 */
final class SecondPress {
    private static final AtomicBoolean LISTENING = new AtomicBoolean();

    private final Runnable told;
    private final AtomicBoolean pressed = new AtomicBoolean();

    private SecondPress(Runnable told) {
        this.told = told;
    }

    /** Listens from now on: the first press ends the process as always, another at once, once it is told. */
    static void listen(Runnable told) {
        if (LISTENING.compareAndSet(false, true)) {
            new SecondPress(told).listen();
        }
    }

    private void listen() {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            InvocationHandler onSignal = (proxy, method, args) -> switch (method.getName()) {
                case "handle" -> press();
                case "hashCode" -> System.identityHashCode(proxy);
                case "equals" -> proxy == args[0];
                default -> "second press";
            };
            signal.getMethod("handle", signal, handler)
                    .invoke(
                            null,
                            signal.getConstructor(String.class).newInstance("INT"),
                            Proxy.newProxyInstance(handler.getClassLoader(), new Class<?>[] {handler}, onSignal));
        } catch (ReflectiveOperationException none) {
            // as the interface says
            return;
        }
    }

    private Object press() {
        if (pressed.getAndSet(true)) {
            told.run();
            Runtime.getRuntime().halt(ExitCode.STOPPED.number());
        }
        System.exit(ExitCode.STOPPED.number());
        return "";
    }
}
