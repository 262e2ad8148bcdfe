package bitterend.bench;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;

/** The heap that a piece of work takes: at its peak, and what a collection of garbage left of it at most. */
final class HeapWatch implements AutoCloseable {
    private static final List<MemoryPoolMXBean> POOLS = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();

    private final AtomicLong live = new AtomicLong();
    private final javax.management.NotificationListener listener = (notice, handback) -> {
        if (notice.getType().equals(GarbageCollectionNotificationInfo.GARBAGE_COLLECTION_NOTIFICATION)) {
            Map<String, MemoryUsage> after = GarbageCollectionNotificationInfo.from(
                            (CompositeData) notice.getUserData())
                    .getGcInfo()
                    .getMemoryUsageAfterGc();
            live.accumulateAndGet(used(after), Math::max);
        }
    };

    private HeapWatch() {
        emitters().forEach(emitter -> emitter.addNotificationListener(listener, null, null));
    }

    /** From now on. */
    static HeapWatch start() {
        System.gc();
        POOLS.forEach(MemoryPoolMXBean::resetPeakUsage);
        return new HeapWatch();
    }

    private static List<NotificationEmitter> emitters() {
        return ManagementFactory.getGarbageCollectorMXBeans().stream()
                .filter(NotificationEmitter.class::isInstance)
                .map(NotificationEmitter.class::cast)
                .toList();
    }

    private static long used(Map<String, MemoryUsage> after) {
        return POOLS.stream()
                .map(pool -> after.get(pool.getName()))
                .filter(usage -> usage != null)
                .mapToLong(MemoryUsage::getUsed)
                .sum();
    }

    /** The peaks of all parts of the heap together, in MiB: garbage that nobody had to clear away yet counts. */
    double peak() {
        return mebibytes(
                POOLS.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum());
    }

    /** The most that was still in use after a collection, one at the end included, in MiB. */
    double live() {
        System.gc();
        return mebibytes(live.accumulateAndGet(
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed(), Math::max));
    }

    private static double mebibytes(long bytes) {
        return bytes / (1024.0 * 1024.0);
    }

    @Override
    public void close() {
        for (NotificationEmitter emitter : emitters()) {
            try {
                emitter.removeNotificationListener(listener);
            } catch (javax.management.ListenerNotFoundException gone) {
                throw new IllegalStateException("the listener of the heap is gone", gone);
            }
        }
    }
}
